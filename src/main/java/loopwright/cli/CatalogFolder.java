package loopwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where the catalogue is, when nobody says. */
final class CatalogFolder {

    private static final String NAME = "catalogs";

    private CatalogFolder() {}

    /** The folder beside that of a brief. */
    static Path beside(Path brief) {
        return brief.resolveSibling("..").resolve(NAME).normalize();
    }

    /** The first catalogue at, in or above a path; one beside it, if there is none anywhere. */
    static Path nearest(Path path) {
        Optional<Path> at = Optional.of(path.toAbsolutePath().normalize());
        while (at.isPresent()) {
            Path here = at.get();
            if (isCatalog(here)) {
                return shortened(here);
            }
            if (isCatalog(here.resolve(NAME))) {
                return shortened(here.resolve(NAME));
            }
            at = Optional.ofNullable(here.getParent());
        }
        return beside(path);
    }

    private static boolean isCatalog(Path folder) {
        return Files.isRegularFile(folder.resolve("catalog.yaml"));
    }

    /** As a user in the working folder would type it. */
    private static Path shortened(Path folder) {
        Path here = Path.of("").toAbsolutePath();
        return folder.startsWith(here) ? here.relativize(folder) : folder;
    }
}
