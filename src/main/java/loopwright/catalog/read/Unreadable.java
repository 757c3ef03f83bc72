package loopwright.catalog.read;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;

/** Why a file could not be read, in words that are the same on every machine. */
final class Unreadable {

    private Unreadable() {}

    static String words(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "no such file";
        }
        if (e instanceof AccessDeniedException) {
            return "a file or folder that may not be read";
        }
        if (e instanceof FileSystemLoopException) {
            return "a link that leads back to a folder above it";
        }
        return "a file that cannot be read (" + e.getClass().getSimpleName() + ")";
    }
}
