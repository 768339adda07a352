package org.fallrule.docket;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The folder within the output folder that reports are made in before they are moved to their places. One run holds it at a
 * time; what an interrupted run left in it is cleared away by the next one.
 */
public final class Unfinished implements AutoCloseable {
    private static final String NAME = ".unfinished";

    private final Path folder;
    private final FileChannel lock;

    private Unfinished(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * Takes hold of it.
     *
     * @throws UnusableInput when another run holds it, or it cannot be made
     */
    public static Unfinished in(Path out) {
        Path folder = out.resolve(NAME);
        if (Files.isSymbolicLink(folder)) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "is a link, and reports are not made elsewhere; take it away");
        }
        try {
            Files.createDirectories(folder);
            FileChannel lock =
                    FileChannel.open(folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!isOurs(lock)) {
                lock.close();
                throw new UnusableInput(
                        Place.of(out.toString()),
                        "is being written to by another run; wait for it, or name another folder with --out");
            }
            Unfinished unfinished = new Unfinished(folder, lock);
            unfinished.clear(false);
            return unfinished;
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(out.toString()), "cannot be written to (" + e + "); name another folder with --out");
        }
    }

    private static boolean isOurs(FileChannel lock) throws IOException {
        try {
            return lock.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    public Path folder() {
        return folder;
    }

    private void clear(boolean whole) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                boolean kept = path.equals(folder) || path.endsWith("lock");
                if (whole || !kept) {
                    Files.delete(path);
                }
            }
        }
    }

    /** Clears it away and lets go of it. What cannot be deleted is left for the next run. */
    @Override
    public void close() {
        try (lock) {
            clear(true);
        } catch (IOException e) {
            // nothing of a report is lost by it
            return;
        }
    }
}
