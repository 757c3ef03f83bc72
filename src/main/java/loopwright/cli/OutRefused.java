package loopwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** A folder cannot take what is to be written: the reason and what to do, in one line for the user. */
final class OutRefused extends IOException {

    private static final long serialVersionUID = 1;

    OutRefused(String why) {
        super(why);
    }

    /** What went wrong in a folder, without names of our own files. */
    static String reason(IOException e, Path folder) {
        if (e instanceof AccessDeniedException) {
            return "no right to write in " + folder + ": name another folder";
        }
        if (e instanceof FileSystemException file && file.getReason() != null) {
            return folder + ": " + file.getReason();
        }
        return e instanceof OutRefused ? String.valueOf(e.getMessage()) : folder + ": " + e.getMessage();
    }
}
