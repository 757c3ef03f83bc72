package loopwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, which the build writes beside the classes. */
final class Version implements IVersionProvider {

    /** The number, like {@code 0.1.0}. */
    static String number() {
        try (InputStream in = Version.class.getResourceAsStream("/loopwright/version.properties")) {
            if (in == null) {
                throw new IllegalStateException("the build left out version.properties");
            }
            try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
                Properties properties = new Properties();
                properties.load(reader);
                return properties.getProperty("version", "unknown");
            }
        } catch (IOException e) {
            throw new UncheckedIOException("version.properties cannot be read", e);
        }
    }

    /** Name and number, as answers carry it. */
    static String program() {
        return "loopwright " + number();
    }

    @Override
    public String[] getVersion() {
        return new String[] {program()};
    }
}
