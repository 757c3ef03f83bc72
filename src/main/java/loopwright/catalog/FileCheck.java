package loopwright.catalog;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.check.Checks;
import loopwright.catalog.check.Items;
import loopwright.catalog.read.Document;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Folder;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.SourceFile;

/**
 * Checks any files: each by what its schema line says it is, together with the catalogue.
 *
 * <p>Files of parts outside the catalogue's folder are checked as if they lay in it. Briefs and readings are checked
 * against the catalogue once the catalogue itself is right; until then only by themselves.
 */
public final class FileCheck {

    private FileCheck() {}

    /**
     * Every problem of the files and of the catalogue, by file, line and column.
     *
     * @param paths files, or folders in which every {@code *.yaml} is meant
     */
    public static List<Problem> check(List<Path> paths, Path catalogFolder) {
        Problems problems = new Problems();
        List<Path> more = new ArrayList<>();
        List<Item> against = new ArrayList<>();
        Set<String> own = ownFiles(catalogFolder);
        for (Path file : files(paths, problems)) {
            if (!own.contains(key(file))) {
                sort(file, more, against, problems);
            }
        }
        Catalogued files = Catalogued.read(catalogFolder, more, problems);
        Checks.run(new Items(files.items(), files.whole()), problems);
        if (problems.isEmpty() || onlyOf(against, problems)) {
            Catalog catalog = CatalogReader.catalog(files);
            of(against, FileKind.BRIEF).forEach(brief -> CatalogReader.brief(brief, catalog, problems));
            CatalogReader.readings(of(against, FileKind.READINGS), catalog, problems);
        }
        return problems.sorted();
    }

    private static List<Item> of(List<Item> items, FileKind kind) {
        return items.stream().filter(i -> i.kind() == kind).toList();
    }

    /** Reads a file once to see what it is: briefs and readings are kept, a file of parts joins the catalogue. */
    private static void sort(Path file, List<Path> more, List<Item> against, Problems problems) {
        Problems own = new Problems();
        List<Item> items = SourceFile.read(file, own)
                .flatMap(source -> Document.of(source, own))
                .map(Document::items)
                .orElse(List.of());
        boolean asks = items.stream().anyMatch(i -> i.kind() == FileKind.BRIEF || i.kind() == FileKind.READINGS);
        if (asks) {
            against.addAll(items);
        } else if (!items.isEmpty()) {
            more.add(file);
        }
        own.sorted().forEach(problems::add);
    }

    private static boolean onlyOf(List<Item> against, Problems problems) {
        Set<String> names = new TreeSet<>();
        against.forEach(b -> names.add(b.subject().file()));
        return problems.sorted().stream().allMatch(p -> names.contains(p.file()));
    }

    private static List<Path> files(List<Path> paths, Problems problems) {
        List<Path> out = new ArrayList<>();
        for (Path path : paths) {
            if (Files.isDirectory(path)) {
                out.addAll(Folder.yamlFiles(path, problems));
            } else {
                out.add(path);
            }
        }
        return out;
    }

    private static Set<String> ownFiles(Path catalogFolder) {
        Set<String> out = new TreeSet<>();
        Folder.yamlFiles(catalogFolder, new Problems()).forEach(f -> out.add(key(f)));
        Catalogued.sharedFiles(catalogFolder).values().forEach(f -> out.add(key(f)));
        return out;
    }

    private static String key(Path file) {
        try {
            return file.toRealPath().toString();
        } catch (IOException e) {
            // A file that is not there is its own name; reading it will say so.
            return file.toAbsolutePath().normalize().toString();
        }
    }
}
