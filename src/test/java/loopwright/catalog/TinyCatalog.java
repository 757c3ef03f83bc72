package loopwright.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A catalogue with one of everything, written into a folder for a test; every test breaks its own copy. */
public final class TinyCatalog {

    private final Path root;

    private TinyCatalog(Path root) {
        this.root = root;
    }

    /** Writes it below the folder. */
    public static TinyCatalog in(Path root) {
        TinyCatalog tiny = new TinyCatalog(root);
        tiny.write("catalogs/catalog.yaml", "schema: loopwright/catalog/1\nsource: invented\ncurrency: EUR\n");
        for (String name : TinyFiles.NAMES) {
            tiny.write(name, TinyFiles.text(name));
        }
        return tiny;
    }

    /** The catalogue's folder. */
    public Path folder() {
        return root.resolve("catalogs");
    }

    /** A file of it. */
    public Path file(String name) {
        return root.resolve(name);
    }

    /** Writes a file. */
    public TinyCatalog write(String name, String text) {
        try {
            Files.createDirectories(root.resolve(name).getParent());
            Files.writeString(root.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Replaces a piece of a file that must be there. */
    public TinyCatalog change(String name, String from, String to) {
        try {
            String text = Files.readString(root.resolve(name));
            if (!text.contains(from)) {
                throw new IllegalArgumentException(name + " does not hold: " + from);
            }
            return write(name, text.replace(from, to));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
