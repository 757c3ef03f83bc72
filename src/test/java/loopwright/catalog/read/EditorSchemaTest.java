package loopwright.catalog.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Schemas for editors follow the records, and every file of the repository follows its schema. */
class EditorSchemaTest {

    private static final Path FOLDER = Path.of("shared", "schemas");

    /** Written anew with {@code mvn test -Dtest=EditorSchemaTest -Dloopwright.regenerate=true}. */
    private static final boolean REGENERATE = Boolean.getBoolean("loopwright.regenerate");

    @ParameterizedTest
    @EnumSource(FileKind.class)
    void isNotStale(FileKind kind) throws IOException {
        Path file = FOLDER.resolve(kind.word() + ".schema.json");
        if (REGENERATE) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, EditorSchema.of(kind));
        }
        assertThat(file).hasContent(EditorSchema.of(kind));
    }

    static List<Path> filesOfTheRepository() throws IOException {
        List<Path> out = new ArrayList<>();
        for (String folder : List.of("catalogs", "scenarios", "shared", "src/test/resources/tiny")) {
            if (Files.isDirectory(Path.of(folder))) {
                try (Stream<Path> files = Files.walk(Path.of(folder))) {
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(out::add);
                }
            }
        }
        return out;
    }

    @ParameterizedTest
    @MethodSource("filesOfTheRepository")
    void fileFollowsItsSchema(Path file) throws IOException {
        String text = Files.readString(file);
        Problems problems = new Problems();
        FileKind kind = Document.of(new SourceFile(file.toString(), text), problems)
                .orElseThrow()
                .kind();
        assertThat(errors(kind, text)).isEmpty();
    }

    @Test
    void schemaRefusesWhatTheReaderRefuses() {
        String head = "schema: loopwright/drives/1\nsource: invented\nitems:\n  - {id: d, title: D, ";
        String buy = "buy: {price_cents: 1, lead_days: 1}, ";
        String sound = "form: 2.5-inch, body: {length_mm: 1, width_mm: unknown, height_mm: {value_mm: 2}}, "
                + "plug_room_mm: 1, heat_W: 4}\n";
        assertThat(errors(FileKind.DRIVES, head + buy + sound)).isEmpty();
        assertThat(errors(FileKind.DRIVES, head + sound)).isNotEmpty();
        assertThat(errors(FileKind.DRIVES, head + buy + sound.replace("2.5-inch", "2-inch")))
                .isNotEmpty();
        assertThat(errors(FileKind.DRIVES, head + buy + sound.replace("heat_W: 4", "heat_W: -4")))
                .isNotEmpty();
        assertThat(errors(FileKind.DRIVES, head + buy + sound.replace("plug_room_mm: 1", "plug_room_cm: 1")))
                .isNotEmpty();
    }

    private static List<String> errors(FileKind kind, String yaml) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(EditorSchema.of(kind))
                .validate(yaml, InputFormat.YAML)
                .stream()
                .map(Object::toString)
                .toList();
    }
}
