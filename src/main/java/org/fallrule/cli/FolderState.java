package org.fallrule.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * How the files of some folders stand: which there are, how large, when written. A folder that is not there has none.
 *
 * @param files each file's stamp
 */
record FolderState(Map<Path, Stamp> files) {
    /** A site's layers lie in its folder, rule books one folder deeper. */
    private static final int DEPTH = 3;

    /** What programs keep beside a file that they have open, and what SQLite writes to read: they are no data. */
    private static final List<String> BESIDE = List.of("-shm", "-journal", ".lock", "~", ".tmp", ".part");

    /** What tells one writing of a file from another. */
    record Stamp(long size, FileTime written, String key) {}

    static FolderState of(List<Path> folders) {
        Map<Path, Stamp> files = new HashMap<>();
        folders.forEach(folder -> look(folder, files));
        return new FolderState(Map.copyOf(files));
    }

    private static void look(Path folder, Map<Path, Stamp> files) {
        try (Stream<Path> all = Files.walk(folder, DEPTH)) {
            all.filter(FolderState::isData).forEach(file -> stamp(file, files));
        } catch (IOException | UncheckedIOException e) {
            // a folder that is not there, or goes while it is looked through, has no files; the next look tells
            return;
        }
    }

    private static void stamp(Path file, Map<Path, Stamp> files) {
        try {
            BasicFileAttributes of = Files.readAttributes(file, BasicFileAttributes.class);
            if (of.isRegularFile()) {
                files.put(file, new Stamp(of.size(), of.lastModifiedTime(), Objects.toString(of.fileKey(), "")));
            }
        } catch (IOException e) {
            // gone since the folder was listed
            return;
        }
    }

    private static boolean isData(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && BESIDE.stream().noneMatch(name::endsWith);
    }
}
