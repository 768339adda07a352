package org.fallrule;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A folder of files that a fuzzer makes up: one text, in which a line {@code >>> pipe.geojson} begins each file. */
public final class FuzzedFolder {
    /** Every byte is a letter in it, so that files need not be texts. */
    private static final Charset BYTES = StandardCharsets.ISO_8859_1;

    private static final Pattern BEGINS = Pattern.compile("(?m)^>>> ?");
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_-][A-Za-z0-9._-]{0,40}");
    private static final int MOST_FILES = 16;

    private FuzzedFolder() {}

    /** The folder of that name, in it what the bytes say and nothing else. */
    public static Path of(String name, byte[] bytes) {
        Map<String, byte[]> files = new TreeMap<>();
        for (String part : BEGINS.split(new String(bytes, BYTES), MOST_FILES)) {
            int end = part.indexOf('\n');
            String file = end < 0 ? "" : part.substring(0, end).strip();
            if (NAME.matcher(file).matches()) {
                files.put(file, part.substring(end + 1).getBytes(BYTES));
            }
        }
        return of(name, files);
    }

    /** The folder of that name, in it these files and nothing else. */
    public static Path of(String name, Map<String, byte[]> files) {
        Path folder = Fuzzed.path(name);
        emptied(folder);
        files.forEach((file, bytes) -> Fuzzed.file(name + "/" + file, bytes));
        return folder;
    }

    private static void emptied(Path folder) {
        try {
            Files.createDirectories(folder);
            try (Stream<Path> all = Files.walk(folder)) {
                all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
            }
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
