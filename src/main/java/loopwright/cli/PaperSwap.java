package loopwright.cli;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import loopwright.paper.Manifest;

/**
 * One set of papers in place of another, in steps that can be undone from what lies in the folder at any moment.
 *
 * <p>New papers are first written into a hidden folder, their manifest last. Then, name by name, the old paper is moved aside
 * and the new one into its place; each move is whole or not at all. The manifest moves last. So while the hidden folder holds
 * a manifest, the swap is not done, and a new paper is in its place exactly if it is no longer in the hidden folder.
 */
final class PaperSwap {

    /** How a file gets another name. */
    @FunctionalInterface
    interface Mover {
        /** Moves a file within a file system, whole or not at all; what has the name already gives way. */
        void move(Path from, Path to) throws IOException;
    }

    /** The file system's own. */
    static final Mover PLAIN = (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);

    private final Path folder;
    private final Path made;
    private final Path aside;
    private final Mover mover;

    PaperSwap(Path folder, Mover mover) {
        this.folder = folder;
        this.made = folder.resolve(".papers-new");
        this.aside = folder.resolve(".papers-old");
        this.mover = mover;
    }

    /** Whether a run left anything of its own. */
    boolean leftAnything() {
        return isThere(made) || isThere(aside);
    }

    /** Whether a swap was begun and is not done. */
    boolean isUnfinished() {
        return isThere(made.resolve(Manifest.NAME));
    }

    /** Puts new papers in the place of those of the same names, and takes others away. */
    void run(SortedMap<String, byte[]> files, Collection<String> stale) throws IOException {
        Files.createDirectory(made);
        for (var file : files.entrySet()) {
            if (!file.getKey().equals(Manifest.NAME)) {
                Files.write(made.resolve(file.getKey()), file.getValue());
            }
        }
        Files.createDirectory(aside);
        Files.write(made.resolve(Manifest.NAME), Manifest.of(files).bytes());
        for (String name : stale) {
            mover.move(folder.resolve(name), aside.resolve(name));
        }
        for (String name : files.keySet()) {
            if (!name.equals(Manifest.NAME)) {
                swap(name);
            }
        }
        swap(Manifest.NAME);
        clear();
    }

    private void swap(String name) throws IOException {
        if (isThere(folder.resolve(name))) {
            mover.move(folder.resolve(name), aside.resolve(name));
        }
        mover.move(made.resolve(name), folder.resolve(name));
    }

    /**
     * Puts the old papers back where a swap is not done.
     *
     * @throws OutRefused if somebody has changed the folder since; then nothing was moved
     */
    void undo() throws IOException {
        Manifest wanted = Manifest.read(Files.readString(made.resolve(Manifest.NAME), StandardCharsets.UTF_8));
        List<String> placed = new ArrayList<>();
        for (String name : wanted.sums().keySet()) {
            Path here = folder.resolve(name);
            if (!isThere(made.resolve(name))
                    && Files.isRegularFile(here, NOFOLLOW_LINKS)
                    && wanted.lists(name, Files.readAllBytes(here))) {
                placed.add(name);
            }
        }
        List<String> old = isThere(aside) ? names(aside) : List.of();
        for (String name : old) {
            if (isThere(folder.resolve(name)) && !placed.contains(name)) {
                throw new OutRefused("a run into " + folder + " was stopped, and " + name
                        + " was changed since: move it elsewhere, then the papers before can be put back");
            }
        }
        for (String name : placed) {
            mover.move(folder.resolve(name), made.resolve(name));
        }
        for (String name : old) {
            mover.move(aside.resolve(name), folder.resolve(name));
        }
        clear();
    }

    /** Takes away what a swap leaves that is done or undone; the manifest first, as without it nothing is to be undone. */
    void clear() throws IOException {
        Files.deleteIfExists(made.resolve(Manifest.NAME));
        for (Path each : List.of(aside, made)) {
            if (isThere(each)) {
                for (String name : names(each)) {
                    Files.delete(each.resolve(name));
                }
                Files.delete(each);
            }
        }
    }

    static boolean isThere(Path path) {
        return Files.exists(path, NOFOLLOW_LINKS);
    }

    /** Names in a folder, sorted. */
    static List<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(f -> String.valueOf(f.getFileName())).sorted().toList();
        }
    }
}
