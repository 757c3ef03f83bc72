package loopwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Outputs kept in files: regression only. Written anew with {@code -Dgolden.write=true}. */
final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private Golden() {}

    static boolean isWriting() {
        return Boolean.getBoolean("golden.write");
    }

    /** Compares with the file, without the versions of catalogue and program. */
    static void check(Ran ran, String file) throws IOException {
        assertThat(ran.outLines()).allMatch(line -> line.length() <= 100);
        String text = ran.out().replaceAll("catalogue [0-9a-f]{12}, loopwright \\S+", "catalogue *, loopwright *");
        if (isWriting()) {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(file), text);
        }
        assertThat(text).isEqualTo(read(file));
    }

    static String read(String file) throws IOException {
        return Files.readString(FOLDER.resolve(file));
    }
}
