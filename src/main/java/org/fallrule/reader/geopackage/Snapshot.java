package org.fallrule.reader.geopackage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The file to open: the GeoPackage itself, or, where another program left changes beside it (SQLite, Write-Ahead Logging and Rollback
 * Journal), a private copy of it with them, which SQLite may then bring in order. It works from a medium that cannot be written to.
 */
final class Snapshot implements AutoCloseable {
    private static final List<String> ENDINGS = List.of("-wal", "-journal");

    private final Path file;
    private final List<Path> copies;

    private Snapshot(Path file, List<Path> copies) {
        this.file = file;
        this.copies = copies;
    }

    static Snapshot of(Path gpkg, Place place) {
        try {
            List<String> waiting = new ArrayList<>();
            for (String ending : ENDINGS) {
                Path beside = beside(gpkg, ending);
                if (Files.isRegularFile(beside) && Files.size(beside) > 0) {
                    waiting.add(ending);
                }
            }
            return waiting.isEmpty() ? new Snapshot(gpkg.toAbsolutePath(), List.of()) : copied(gpkg, waiting, place);
        } catch (IOException failed) {
            throw new UnusableInput(
                    place,
                    "has changes beside it that cannot be read (" + failed
                            + "); close the program that has it open and try again");
        }
    }

    private static Snapshot copied(Path gpkg, List<String> waiting, Place place) throws IOException {
        Path folder = Files.createTempDirectory("fallrule-gpkg");
        Path copy = folder.resolve("copy.gpkg");
        Snapshot snapshot = new Snapshot(
                copy, List.of(beside(copy, "-wal"), beside(copy, "-journal"), beside(copy, "-shm"), copy, folder));
        try {
            String before = state(gpkg, waiting);
            Files.copy(gpkg, copy);
            for (String ending : waiting) {
                Files.copy(beside(gpkg, ending), beside(copy, ending));
            }
            if (!state(gpkg, waiting).equals(before)) {
                throw new UnusableInput(
                        place, "is being changed by another program; save and close it there and try again");
            }
            return snapshot;
        } catch (IOException | RuntimeException failed) {
            snapshot.close();
            throw failed;
        }
    }

    /** Lengths and times of change, to see whether someone wrote while it was copied. */
    private static String state(Path gpkg, List<String> waiting) throws IOException {
        StringBuilder state = new StringBuilder();
        state.append(Files.size(gpkg)).append(' ').append(Files.getLastModifiedTime(gpkg));
        for (String ending : waiting) {
            Path beside = beside(gpkg, ending);
            state.append(' ').append(Files.size(beside)).append(' ').append(Files.getLastModifiedTime(beside));
        }
        return state.toString();
    }

    private static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    Path file() {
        return file;
    }

    /** Whether the file is a copy that changes still have to be brought into. */
    boolean hasChanges() {
        return !copies.isEmpty();
    }

    /** Its length in bytes, the changes included. */
    long length() {
        long length = size(file);
        return hasChanges() ? length + size(beside(file, "-wal")) : length;
    }

    private static long size(Path file) {
        try {
            return Files.exists(file) ? Files.size(file) : 0;
        } catch (IOException gone) {
            return 0;
        }
    }

    @Override
    public void close() {
        for (Path copy : copies) {
            try {
                Files.deleteIfExists(copy);
            } catch (IOException held) {
                copy.toFile().deleteOnExit();
            }
        }
    }
}
