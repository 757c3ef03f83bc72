package loopwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * A folder that a set of files is written into, whole or not at all.
 *
 * <p>Everything is first written beside it. Files of the same names that were there are set aside, and put back if anything
 * fails; other files in the folder are left alone.
 */
final class OutFolder {

    private final Path folder;

    OutFolder(Path folder) {
        this.folder = folder.toAbsolutePath().normalize();
    }

    /** Those of the names that are taken already. */
    List<String> taken(Iterable<String> names) {
        List<String> out = new ArrayList<>();
        for (String name : names) {
            if (Files.exists(folder.resolve(name))) {
                out.add(name);
            }
        }
        return out;
    }

    /**
     * Writes the files by name.
     *
     * @throws IOException if any cannot be written; then what was there is there as it was
     */
    void write(SortedMap<String, byte[]> files) throws IOException {
        Files.createDirectories(folder);
        Path made = Files.createTempDirectory(folder, ".new-");
        Path aside = Files.createTempDirectory(folder, ".old-");
        List<String> moved = new ArrayList<>();
        List<String> placed = new ArrayList<>();
        try {
            for (var file : files.entrySet()) {
                Files.write(made.resolve(file.getKey()), file.getValue());
            }
            for (String name : files.keySet()) {
                if (Files.exists(folder.resolve(name))) {
                    Files.move(folder.resolve(name), aside.resolve(name));
                    moved.add(name);
                }
                Files.move(made.resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
                placed.add(name);
            }
        } catch (IOException e) {
            for (String name : placed) {
                Files.deleteIfExists(folder.resolve(name));
            }
            for (String name : moved) {
                Files.move(aside.resolve(name), folder.resolve(name));
            }
            Files.delete(aside);
            throw e;
        } finally {
            emptied(made);
        }
        emptied(aside);
    }

    private static void emptied(Path folder) throws IOException {
        try (var left = Files.list(folder)) {
            for (Path file : left.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
