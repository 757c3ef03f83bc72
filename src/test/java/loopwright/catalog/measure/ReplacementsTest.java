package loopwright.catalog.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.TinyCatalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.read.Document;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Node.MapNode;
import loopwright.catalog.read.Problems;
import loopwright.catalog.read.ProblemsException;
import loopwright.catalog.read.RecordBinder;
import loopwright.catalog.read.SourceFile;
import loopwright.fit.FitCase;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReplacementsTest {

    private static final Set<String> HEAD = Set.of("schema", "source");

    static List<Path> filesWithLengths() throws IOException {
        List<Path> out = new ArrayList<>(List.of(Path.of("shared/standards.yaml"), Path.of("shared/practice.yaml")));
        try (Stream<Path> files = Files.walk(Path.of("catalogs"))) {
            files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(out::add);
        }
        return out;
    }

    private static List<Item> items(Path file) throws IOException {
        Problems problems = new Problems();
        List<Item> out = Document.of(new SourceFile(file.toString(), Files.readString(file)), problems)
                .orElseThrow()
                .items();
        problems.throwIfAny();
        return out;
    }

    private static Record bound(Item item, MapNode node) {
        Problems problems = new Problems();
        Record out = new RecordBinder(item.subject(), problems)
                .bind(item.kind().record(), node, item.kind().isList() ? Set.of() : HEAD)
                .map(r -> (Record) r)
                .orElseThrow(() -> new AssertionError(problems.sorted().toString()));
        problems.throwIfAny();
        return out;
    }

    private static Map<String, Dimension> values(String id, Record record) {
        Map<String, Dimension> out = new LinkedHashMap<>();
        Lengths.of(id, record).forEach(l -> out.put(l.path(), l.dimension()));
        return out;
    }

    /** Every length of every item, replaced by its own value: nothing but its ± and how it is known changes. */
    @ParameterizedTest
    @MethodSource("filesWithLengths")
    void aLengthReplacedByItsOwnValueLeavesTheRestAlone(Path file) throws IOException {
        for (Item item : items(file)) {
            String id = item.kind().isList() ? item.id() : item.kind().word();
            Record before = (Record) item.value().orElseThrow();
            for (Length length : Lengths.of(id, before)) {
                Dimension was = length.dimension();
                Dimension to = new Dimension(
                        was.isUnknown() ? 2000 : was.valueHmm(), was.plusMinusHmm() == 17 ? 18 : 17, Known.MEASURED);
                MapNode edited = edited(item, length, to);
                Record after = bound(item, edited);
                Map<String, Dimension> expected = values(id, before);
                expected.put(length.path(), to);
                assertThat(values(id, after)).as(length.address()).isEqualTo(expected);
                if (!was.isUnknown()) {
                    Record back = bound(
                            item,
                            edited(
                                    new Item(item.kind(), item.subject(), edited, item.id(), item.value()),
                                    length,
                                    was));
                    assertThat(back).as(length.address()).isEqualTo(before);
                }
            }
        }
    }

    private static MapNode edited(Item item, Length length, Dimension to) {
        Replacement one = new Replacement(length.id(), length.path(), length.dimension(), to, "a test");
        return new Replacements(List.of(one)).edited(item.kind(), item.id(), item.node());
    }

    private static Replacement replacement(String id, String path, int fromHmm, int toHmm) {
        return new Replacement(
                id, path, Dimension.ofHmm(fromHmm), new Dimension(toHmm, 50, Known.ASSUMED), "--assume a test");
    }

    @Test
    void theVersionSaysWhatWasReplaced(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        Catalog plain = CatalogReader.read(tiny.folder());
        Catalog none = CatalogReader.read(tiny.folder(), Replacements.NONE);
        Catalog one = CatalogReader.read(
                tiny.folder(), new Replacements(List.of(replacement("r-140", "body.thickness_mm", 3000, 3100))));
        Catalog other = CatalogReader.read(
                tiny.folder(), new Replacements(List.of(replacement("r-140", "body.thickness_mm", 3000, 3200))));
        assertThat(none).isEqualTo(plain);
        assertThat(List.of(plain.version(), one.version(), other.version())).doesNotHaveDuplicates();
        assertThat(CatalogReader.read(
                                tiny.folder(),
                                new Replacements(List.of(replacement("r-140", "body.thickness_mm", 3000, 3100))))
                        .version())
                .isEqualTo(one.version());
    }

    @Test
    void theCatalogueIsCheckedWithWhatIsReplaced(@TempDir Path folder) {
        TinyCatalog tiny = TinyCatalog.in(folder);
        assertThat(problems(tiny, replacement("r-140", "body.width_mm", 14400, 14401)))
                .containsExactly(
                        "catalogs/radiators.yaml:9:17: radiator \"r-140\": body.width_mm: found 144.01, allowed an"
                                + " even number of hundredths of a millimetre. It is halved about the centre: round the last digit to an"
                                + " even one. As overridden by"
                                + " --assume a test: r-140.body.width_mm 144.0 -> 144.01 mm.");
        assertThat(problems(tiny, replacement("r-140", "body.thickness_mm", 3000, 900)))
                .containsExactly(
                        "catalogs/radiators.yaml:10:21: radiator \"r-140\": body.thickness_mm.value_mm: found 9, allowed"
                                + " 10 to 120. Is it given in mm? As overridden by --assume a test: r-140.body.thickness_mm 30.0"
                                + " -> 9.0 mm.");
    }

    /** The obstruction reaches to where the wall was; it is taken as it is. */
    @Test
    void aWallThatWasReadNearerLeavesWhatIsBuiltInAlone() {
        Dimension was = new Dimension(43400, 50, Known.MEASURED);
        Replacement one = new Replacement(
                "short-tower", "shell.interior.height_mm", was, new Dimension(43300, 15, Known.MEASURED), "a test");
        Catalog nearer = CatalogReader.read(Path.of("catalogs"), new Replacements(List.of(one)));
        assertThat(nearer.chassis("short-tower").shell().interior().heightMm().valueHmm())
                .isEqualTo(43300);
    }

    /** Written into a copy of the catalogue by hand, the same lengths give the same catalogue and the same layouts. */
    @Test
    void replacingIsTheSameAsEditing(@TempDir Path folder) throws IOException {
        copy(Path.of("catalogs"), folder.resolve("catalogs"));
        copy(Path.of("shared"), folder.resolve("shared"));
        Path cards = folder.resolve("catalogs/parts/graphics-cards.yaml");
        String longer = Pattern.compile("(?<![a-z_])length_mm: (\\d+)")
                .matcher(Files.readString(cards))
                .replaceAll(m -> "length_mm: {value_mm: " + (Integer.parseInt(m.group(1)) + 3)
                        + ", plus_minus_mm: 0.5, known: assumed}")
                .replace(
                        "{value_mm: 302.5, plus_minus_mm: 1.5, known: measured}",
                        "{value_mm: 305.5, plus_minus_mm: 1.5, known: assumed}")
                .replace(
                        "{value_mm: 286, plus_minus_mm: 1, known: measured}",
                        "{value_mm: 289, plus_minus_mm: 1, known: assumed}");
        Files.writeString(cards, longer);
        Catalog edited = CatalogReader.read(folder.resolve("catalogs"));
        Catalog plain = CatalogReader.read(Path.of("catalogs"));
        Catalog assumed = CatalogReader.read(
                Path.of("catalogs"),
                new Replacements(Assumptions.replacements(List.of("card.length=+3mm"), new Lengths(plain))));
        assertThat(edited.parts()).isNotEqualTo(plain.parts());
        assertThat(assumed.parts()).isEqualTo(edited.parts());
        assertThat(assumed.version()).isNotIn(edited.version(), plain.version());
        assertThat(layouts(assumed)).isNotEmpty().isEqualTo(layouts(edited));
    }

    private static List<String> layouts(Catalog catalog) {
        Brief demo = CatalogReader.readBrief(Path.of("scenarios/demo.yaml"), catalog);
        FitCase fitCase = new FitCase(catalog, catalog.chassis("short-tower"), demo);
        return new FitSearch(fitCase, FitWish.ALL, () -> false)
                .run().fits().stream().map(f -> f.layout().text() + f.needed()).toList();
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.sorted().toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }

    private static List<String> problems(TinyCatalog tiny, Replacement one) {
        ProblemsException e = catchThrowableOfType(
                ProblemsException.class, () -> CatalogReader.read(tiny.folder(), new Replacements(List.of(one))));
        String root = tiny.file("x").getParent() + "/";
        return e.problems().stream().map(p -> p.text().replace(root, "")).toList();
    }
}
