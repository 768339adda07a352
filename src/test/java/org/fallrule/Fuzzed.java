package org.fallrule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;

/** A folder for the files that a fuzzer makes up, and the promise that every reader of them keeps. */
public final class Fuzzed {
    private static final Path FOLDER = made();

    private Fuzzed() {}

    /** The path of a file in the folder. */
    public static Path path(String name) {
        return FOLDER.resolve(name);
    }

    /** A file with these bytes; one of that name is overwritten. */
    public static Path file(String name, byte[] bytes) {
        try {
            Path file = FOLDER.resolve(name);
            Files.createDirectories(file.resolveSibling(""));
            return Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whatever is read, it is read or refused in a sentence; any other exception is the fuzzer's catch. */
    public static void readOrRefuse(Runnable reading) {
        try {
            reading.run();
        } catch (UnusableInput refused) {
            List<Fault> faults = refused.faults();
            if (faults.isEmpty()
                    || faults.stream()
                            .anyMatch(fault -> fault.says().isBlank()
                                    || fault.where().file().isBlank())) {
                throw new AssertionError("refused without saying why or where", refused);
            }
        }
    }

    private static Path made() {
        try {
            Path folder = Files.createTempDirectory("fallrule-fuzzed");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> removed(folder)));
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void removed(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
