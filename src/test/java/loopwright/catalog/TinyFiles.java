package loopwright.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The texts of the tiny catalogue, kept as test resources. */
final class TinyFiles {

    static final List<String> NAMES = List.of(
            "catalogs/radiators.yaml",
            "catalogs/fans.yaml",
            "catalogs/pumps.yaml",
            "catalogs/reservoirs.yaml",
            "catalogs/blocks.yaml",
            "catalogs/boards.yaml",
            "catalogs/processors.yaml",
            "catalogs/graphics-cards.yaml",
            "catalogs/memory.yaml",
            "catalogs/supplies.yaml",
            "catalogs/drives.yaml",
            "catalogs/tubes.yaml",
            "catalogs/fittings.yaml",
            "catalogs/coolants.yaml",
            "catalogs/covers.yaml",
            "catalogs/grilles.yaml",
            "catalogs/screws.yaml",
            "catalogs/chassis/cube.yaml",
            "shared/standards.yaml",
            "shared/practice.yaml",
            "scenarios/brief.yaml");

    private TinyFiles() {}

    static String text(String name) {
        try (InputStream in = Objects.requireNonNull(TinyFiles.class.getResourceAsStream("/tiny/" + name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
