package loopwright.catalog;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.check.BriefCheck;
import loopwright.catalog.check.Checks;
import loopwright.catalog.check.Items;
import loopwright.catalog.measure.Lengths;
import loopwright.catalog.measure.ReadingCheck;
import loopwright.catalog.measure.Replacements;
import loopwright.catalog.measure.Taken;
import loopwright.catalog.part.Part;
import loopwright.catalog.read.CatalogHead;
import loopwright.catalog.read.Document;
import loopwright.catalog.read.FileKind;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Place;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.ProblemsException;
import loopwright.catalog.read.SourceFile;
import loopwright.catalog.read.Subject;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Standards;

/**
 * Reads a catalogue folder, and briefs against it.
 *
 * <p>The catalogue is every {@code *.yaml} below the folder, and {@code standards.yaml} and {@code practice.yaml} of the
 * folder {@code shared} beside it. Either everything is right, or every problem is told at once.
 */
public final class CatalogReader {

    private CatalogReader() {}

    /**
     * Reads a catalogue.
     *
     * @throws ProblemsException with every problem of every file
     */
    public static Catalog read(Path catalogFolder) {
        Problems problems = new Problems();
        Catalogued files = Catalogued.read(catalogFolder, List.of(), problems);
        Checks.run(new Items(files.items(), files.whole()), problems);
        problems.throwIfAny();
        return catalog(files);
    }

    /**
     * Reads a catalogue with some lengths replaced.
     *
     * @throws ProblemsException with every problem of every file; where the catalogue is right by itself, each says what
     *     replaced its values
     */
    public static Catalog read(Path catalogFolder, Replacements replaced) {
        if (replaced.all().isEmpty()) {
            return read(catalogFolder);
        }
        return read(catalogFolder, replaced, read(catalogFolder));
    }

    /**
     * The same where the catalogue has been read as it is written.
     *
     * @param plain the catalogue without replacements
     */
    public static Catalog read(Path catalogFolder, Replacements replaced, Catalog plain) {
        Map<String, Chassis> asWritten = new TreeMap<>();
        plain.all(Chassis.class).forEach(c -> asWritten.put(c.id(), c));
        Problems problems = new Problems();
        Catalogued files = Catalogued.read(catalogFolder, List.of(), replaced, problems);
        Checks.run(new Items(files.items(), files.whole(), asWritten), problems);
        Problems told = new Problems();
        problems.sorted().forEach(p -> told.add(replaced.told(p)));
        told.throwIfAny();
        return catalog(files);
    }

    /**
     * Makes sure that a file is there and can be read, before anything is sought beside it.
     *
     * @throws ProblemsException if not
     */
    public static void requireReadable(Path file) {
        Problems problems = new Problems();
        SourceFile.read(file, problems);
        problems.throwIfAny();
    }

    /**
     * Reads a brief.
     *
     * @throws ProblemsException with every problem of the brief
     */
    public static Brief readBrief(Path file, Catalog catalog) {
        Problems problems = new Problems();
        List<Item> items = SourceFile.read(file, problems)
                .flatMap(source -> Document.of(source, problems))
                .map(Document::items)
                .orElse(List.of());
        items.forEach(item -> brief(item, catalog, problems));
        if (problems.isEmpty() && items.isEmpty()) {
            problems.add(new Subject(SourceFile.nameOf(file), "")
                    .problem(Place.START, "items", "nothing", FileKind.BRIEF.schema(), "This file is not a brief."));
        }
        problems.throwIfAny();
        return items.get(0).as(Brief.class).orElseThrow();
    }

    /**
     * Reads what instruments said of a catalogue's lengths.
     *
     * @return in the order of the files, and in a file from its start
     * @throws ProblemsException with every problem of every file
     */
    public static List<Taken> readReadings(List<Path> files, Catalog catalog) {
        Problems problems = new Problems();
        List<Taken> out = new ArrayList<>();
        for (Path file : files) {
            Optional<Document> document =
                    SourceFile.read(file, problems).flatMap(source -> Document.of(source, problems));
            document.filter(d -> d.kind() != FileKind.READINGS)
                    .ifPresent(d -> problems.add(new Subject(SourceFile.nameOf(file), "")
                            .problem(
                                    Place.START,
                                    "schema",
                                    d.kind().schema(),
                                    FileKind.READINGS.schema(),
                                    "This file holds no readings.")));
            document.filter(d -> d.kind() == FileKind.READINGS)
                    .ifPresent(d -> out.addAll(readings(d.items(), catalog, problems)));
        }
        problems.throwIfAny();
        return List.copyOf(out);
    }

    static List<Taken> readings(List<Item> items, Catalog catalog, Problems problems) {
        ReadingCheck check =
                new ReadingCheck(new Lengths(catalog), catalog.practice().measuring(), problems);
        return items.stream().flatMap(item -> check.taken(item).stream()).toList();
    }

    static void brief(Item item, Catalog catalog, Problems problems) {
        if (item.kind() == FileKind.BRIEF) {
            BriefCheck.run(item, catalog.parts(), catalog.currency(), problems);
        } else {
            problems.add(new Subject(item.subject().file(), "")
                    .problem(
                            Place.START,
                            "schema",
                            item.kind().schema(),
                            FileKind.BRIEF.schema(),
                            "This file is not a brief."));
        }
    }

    static Catalog catalog(Catalogued files) {
        Map<String, Part> parts = new TreeMap<>();
        files.parts().forEach(part -> parts.put(part.id(), part));
        return new Catalog(
                files.version(),
                files.only(CatalogHead.class).currency(),
                parts,
                files.only(Standards.class),
                files.only(Practice.class));
    }
}
