package loopwright.catalog;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.catalog.measure.Replacements;
import loopwright.catalog.part.Part;
import loopwright.catalog.read.Digest;
import loopwright.catalog.read.Document;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Folder;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Place;
import loopwright.catalog.read.Problem;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.SourceFile;
import loopwright.catalog.read.Subject;

/**
 * The files of a catalogue as read: items with their places, right or wrong.
 *
 * @param version digest of names and bytes
 * @param items every item of every file that could be parsed, in the order of the files' names
 * @param whole whether every file could be parsed; if not, what is missing is not known
 */
record Catalogued(String version, List<Item> items, boolean whole) {

    /** Files of the folder {@code shared} that belong to every catalogue. */
    private static final List<FileKind> SHARED = List.of(FileKind.STANDARDS, FileKind.PRACTICE);

    /** Under this name, which no file has, what is replaced counts in the version. */
    private static final String REPLACED = "/replaced";

    Catalogued {
        items = List.copyOf(items);
    }

    /**
     * Reads the files.
     *
     * @param more files read as if they lay in the folder
     */
    static Catalogued read(Path folder, List<Path> more, Problems problems) {
        return read(folder, more, Replacements.NONE, problems);
    }

    /** Reads the files with some lengths replaced, which is another version of the catalogue. */
    static Catalogued read(Path folder, List<Path> more, Replacements replaced, Problems problems) {
        SortedMap<String, Path> files = new TreeMap<>();
        for (Path file : Folder.yamlFiles(folder, problems)) {
            files.put(folder.relativize(file).toString().replace('\\', '/'), file);
        }
        more.forEach(file -> files.put(SourceFile.nameOf(file.toAbsolutePath()), file));
        files.putAll(sharedFiles(folder));
        SortedMap<String, String> texts = new TreeMap<>();
        List<Item> items = new ArrayList<>();
        boolean whole = true;
        for (Map.Entry<String, Path> file : files.entrySet()) {
            Optional<SourceFile> source = SourceFile.read(file.getValue(), problems);
            source.ifPresent(s -> texts.put(file.getKey(), s.text()));
            Optional<Document> document = source.flatMap(s -> Document.of(s, replaced, problems));
            document.ifPresent(d -> items.addAll(d.items()));
            document.flatMap(d -> misplaced(d, file.getKey())).ifPresent(problems::add);
            whole &= document.isPresent();
        }
        noteIfNoHead(folder, items, problems);
        if (!replaced.all().isEmpty()) {
            texts.put(REPLACED, replaced.text());
        }
        return new Catalogued(Digest.of(texts), items, whole);
    }

    /** The files beside the folder that belong to it, by their names seen from it. */
    static SortedMap<String, Path> sharedFiles(Path folder) {
        Path shared = folder.resolve("..").resolve("shared").normalize();
        SortedMap<String, Path> out = new TreeMap<>();
        SHARED.forEach(kind -> out.put("../shared/" + kind.word() + ".yaml", shared.resolve(kind.word() + ".yaml")));
        return out;
    }

    /** Every part that was right. */
    List<Part> parts() {
        return items.stream().flatMap(i -> i.as(Part.class).stream()).toList();
    }

    /** The one record of a class that a catalogue has once. */
    <R> R only(Class<R> type) {
        return items.stream().flatMap(i -> i.as(type).stream()).findFirst().orElseThrow();
    }

    private static Optional<Problem> misplaced(Document document, String name) {
        FileKind kind = document.kind();
        Optional<FileKind> wanted = SHARED.stream()
                .filter(k -> name.equals("../shared/" + k.word() + ".yaml"))
                .findFirst();
        boolean head = kind == FileKind.CATALOG;
        boolean right = wanted.map(k -> k == kind)
                .orElse(kind.isPart() || (head && name.equals(FileKind.CATALOG.word() + ".yaml")));
        if (right) {
            return Optional.empty();
        }
        String allowed = wanted.map(FileKind::schema)
                .orElse("a kind of part, or " + FileKind.CATALOG.schema() + " in catalog.yaml");
        String hint = kind == FileKind.READINGS ? "Readings lie outside the catalogue: name them with --readings." : "";
        return Optional.of(
                new Subject(document.file().name(), "").problem(Place.START, "schema", kind.schema(), allowed, hint));
    }

    private static void noteIfNoHead(Path folder, List<Item> items, Problems problems) {
        if (items.stream().noneMatch(i -> i.kind() == FileKind.CATALOG)) {
            problems.add(new Subject(SourceFile.nameOf(folder.resolve("catalog.yaml")), "")
                    .problem(
                            Place.START,
                            "",
                            "no catalogue line that can be read",
                            "schema: loopwright/catalog/1 with source and currency",
                            ""));
        }
    }
}
