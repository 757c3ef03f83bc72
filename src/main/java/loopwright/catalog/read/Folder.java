package loopwright.catalog.read;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.FileVisitor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The YAML files below a folder, sorted; loops and folders that cannot be read become problems. */
public final class Folder {

    /** How deep folders may lie in each other. */
    private static final int DEPTH_MAX = 16;

    private Folder() {}

    /** Every {@code *.yaml} below the folder, by name. */
    public static List<Path> yamlFiles(Path folder, Problems problems) {
        TreeMap<String, Path> found = new TreeMap<>();
        if (!Files.isDirectory(folder)) {
            problems.add(new Subject(SourceFile.nameOf(folder), "")
                    .problem(Place.START, "", "no such folder", "a folder with YAML files", ""));
            return List.of();
        }
        try {
            Files.walkFileTree(folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), DEPTH_MAX, visitor(found, problems));
        } catch (IOException e) {
            problems.add(unreadable(folder, e));
        }
        return List.copyOf(found.values());
    }

    private static FileVisitor<Path> visitor(Map<String, Path> found, Problems problems) {
        return new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                String name = SourceFile.nameOf(file);
                if (name.endsWith(".yaml")) {
                    found.put(name, file);
                } else if (name.endsWith(".yml")) {
                    problems.add(new Subject(name, "")
                            .problem(Place.START, "", "the ending .yml", "the ending .yaml", "Rename the file."));
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                problems.add(unreadable(file, e));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException e) {
                if (e != null) {
                    problems.add(unreadable(folder, e));
                }
                return FileVisitResult.CONTINUE;
            }
        };
    }

    private static Problem unreadable(Path path, IOException e) {
        return new Subject(SourceFile.nameOf(path), "")
                .problem(Place.START, "", Unreadable.words(e), "files and folders that can be read", "");
    }
}
