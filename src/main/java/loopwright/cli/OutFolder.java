package loopwright.cli;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.regex.Pattern;
import loopwright.paper.Manifest;

/**
 * A folder that a set of papers is written into, whole or not at all.
 *
 * <p>Papers of the set before that are not of this one are taken away, if they still are what was written; other files are left
 * alone. What a run that was stopped left half done is undone by the next ({@link PaperSwap}).
 */
final class OutFolder {

    /** What somebody could cut from; one that is not of the set is told. */
    private static final Pattern TEMPLATE = Pattern.compile("(templates?|stock)-.*\\.(pdf|svg|dxf)");

    private final Path shown;
    private final Path folder;
    private final PaperSwap swap;

    OutFolder(Path folder) {
        this(folder, PaperSwap.PLAIN);
    }

    OutFolder(Path folder, PaperSwap.Mover mover) {
        this.shown = folder;
        this.folder = folder.toAbsolutePath().normalize();
        this.swap = new PaperSwap(this.folder, mover);
    }

    /**
     * Refuses what cannot be written into.
     *
     * @throws OutRefused with the reason
     */
    void requireUsable() throws OutRefused {
        if (PaperSwap.isThere(folder)) {
            requireFolder(folder, shown);
            return;
        }
        Path parent = folder.getParent();
        if (parent == null || !PaperSwap.isThere(parent)) {
            throw new OutRefused("the folder " + parent + ", which " + shown
                    + " would be made in, is not there: make it first, or name another");
        }
        requireFolder(parent, parent);
    }

    private static void requireFolder(Path path, Path shown) throws OutRefused {
        if (!Files.exists(path)) {
            throw new OutRefused(shown + " is a link that leads nowhere: name a folder");
        }
        if (!Files.isDirectory(path)) {
            throw new OutRefused(shown + " is a file, not a folder: name a folder");
        }
        if (!Files.isWritable(path)) {
            throw new OutRefused("no right to write in " + shown + ": name another folder");
        }
    }

    /**
     * Undoes what a run that was stopped left half done.
     *
     * @return whether there was any
     */
    @SuppressWarnings("try") // to be closed is what the hold is for
    boolean putBack() throws IOException {
        if (!swap.leftAnything()) {
            return false;
        }
        try (Alone alone = Alone.in(folder, shown)) {
            if (swap.isUnfinished()) {
                swap.undo();
                return true;
            }
            swap.clear();
            return false;
        }
    }

    /**
     * Refuses names that belong to something else than a file: a folder, a link, a device.
     *
     * @throws OutRefused naming the first
     */
    void requireFiles(Iterable<String> names) throws OutRefused {
        for (String name : taken(names)) {
            Path path = folder.resolve(name);
            if (!Files.isRegularFile(path, NOFOLLOW_LINKS)) {
                String what = Files.isDirectory(path, NOFOLLOW_LINKS)
                        ? "a folder"
                        : Files.isSymbolicLink(path) ? "a link" : "a special file";
                throw new OutRefused(name + " in " + shown + " is " + what
                        + ", and a paper has that name: move it, or name another folder");
            }
        }
    }

    /** Those of the names that are taken already. */
    List<String> taken(Iterable<String> names) {
        List<String> out = new ArrayList<>();
        for (String name : names) {
            if (PaperSwap.isThere(folder.resolve(name))) {
                out.add(name);
            }
        }
        return out;
    }

    /**
     * Writes the files by name; their manifest is written with them.
     *
     * @return templates that are not of this set and yet stay, and papers of the set before that were changed
     * @throws IOException if any cannot be written; then what was there is there as it was
     */
    @SuppressWarnings("try") // to be closed is what the hold is for
    List<String> write(SortedMap<String, byte[]> files) throws IOException {
        requireFiles(files.keySet());
        if (!PaperSwap.isThere(folder)) {
            Files.createDirectory(folder);
        }
        putBack();
        List<String> kept;
        try (Alone alone = Alone.in(folder, shown)) {
            Manifest before = before();
            List<String> stale = new ArrayList<>();
            kept = new ArrayList<>();
            for (String name : PaperSwap.names(folder)) {
                if (files.containsKey(name)) {
                    continue;
                }
                if (isAsWritten(before, name)) {
                    stale.add(name);
                } else if (before.sums().containsKey(name)
                        || TEMPLATE.matcher(name).matches()) {
                    kept.add(name);
                }
            }
            try {
                swap.run(files, stale);
            } catch (IOException e) {
                undoAfter(e);
                throw e;
            }
        }
        return kept;
    }

    private void undoAfter(IOException e) {
        try {
            if (swap.isUnfinished()) {
                swap.undo();
            } else {
                swap.clear();
            }
        } catch (IOException again) {
            e.addSuppressed(again);
        }
    }

    private Manifest before() throws IOException {
        Path path = folder.resolve(Manifest.NAME);
        return Manifest.read(
                Files.isRegularFile(path, NOFOLLOW_LINKS)
                        ? new String(Files.readAllBytes(path), StandardCharsets.UTF_8)
                        : "");
    }

    private boolean isAsWritten(Manifest before, String name) throws IOException {
        Path path = folder.resolve(name);
        return before.sums().containsKey(name)
                && Files.isRegularFile(path, NOFOLLOW_LINKS)
                && before.lists(name, Files.readAllBytes(path));
    }

    /** Holds a folder while papers are moved in it; the system lets go of it when a process ends. */
    private record Alone(Path mark, FileChannel channel) implements AutoCloseable {

        static Alone in(Path folder, Path shown) throws IOException {
            Path mark = folder.resolve(".papers-lock");
            FileChannel channel =
                    FileChannel.open(mark, StandardOpenOption.CREATE, StandardOpenOption.WRITE, NOFOLLOW_LINKS);
            boolean held = false;
            try {
                held = isHeld(channel);
            } finally {
                if (!held) {
                    channel.close();
                }
            }
            if (held) {
                return new Alone(mark, channel);
            }
            throw new OutRefused("another run is writing into " + shown + ": wait for it, or name another folder");
        }

        private static boolean isHeld(FileChannel channel) throws IOException {
            try {
                return channel.tryLock() != null;
            } catch (OverlappingFileLockException e) {
                return false; // by another run in this process
            }
        }

        @Override
        public void close() throws IOException {
            Files.deleteIfExists(mark);
            channel.close();
        }
    }
}
