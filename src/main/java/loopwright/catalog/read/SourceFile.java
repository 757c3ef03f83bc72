package loopwright.catalog.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The text of a file, read within bounds.
 *
 * @param name as the user would type it
 */
public record SourceFile(String name, String text) {

    /** Largest file read, bytes. */
    public static final int BYTES_MAX = 4 * 1024 * 1024;

    /** Reads a file; what is wrong with it becomes a problem and nothing is returned. */
    public static Optional<SourceFile> read(Path path, Problems problems) {
        String name = nameOf(path);
        Subject file = new Subject(name, "");
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            problems.add(file.problem(Place.START, "", "something that is not a plain file", "a plain file", ""));
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(BYTES_MAX + 1);
            if (bytes.length > BYTES_MAX) {
                problems.add(file.problem(
                        Place.START, "", "more than 4 MiB", "at most 4 MiB a file", "Split it into several files."));
                return Optional.empty();
            }
            return decoded(file, bytes, problems);
        } catch (IOException e) {
            problems.add(file.problem(Place.START, "", Unreadable.words(e), "a file that can be read", ""));
            return Optional.empty();
        }
    }

    /** How a path is printed: as given, with forward slashes. */
    public static String nameOf(Path path) {
        return path.normalize().toString().replace('\\', '/');
    }

    private static Optional<SourceFile> decoded(Subject file, byte[] bytes, Problems problems) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            problems.add(file.problem(
                    endOf(text),
                    "",
                    String.format(java.util.Locale.ROOT, "the byte 0x%02X that is not UTF-8", bytes[in.position()]),
                    "UTF-8 text",
                    "Save the file as UTF-8."));
            return Optional.empty();
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < ' ' && c != '\n' && c != '\r' && c != '\t') || c == 0x7F) {
                problems.add(file.problem(
                        endOf(text.substring(0, i)), "", "a control character", "printable characters", ""));
                return Optional.empty();
            }
        }
        return Optional.of(new SourceFile(file.file(), text));
    }

    private static Place endOf(String text) {
        int lines = (int) text.chars().filter(c -> c == '\n').count();
        int start = text.lastIndexOf('\n') + 1;
        return new Place(lines + 1, text.codePointCount(start, text.length()) + 1);
    }
}
