package org.fallrule.docket;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fallrule.document.JsonTree;
import org.fallrule.document.JsonWriter;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.EntryTree;
import org.jspecify.annotations.Nullable;

/**
 * What a report was made from, kept in a file beside it: the digest of everything that went into it, the sizes of its files, and
 * its entry in the docket. It comes to its place together with the report, so that a report with a record is whole.
 */
public final class ReportRecord {
    /** The record's file in a report's folder. */
    public static final String FILE = "made-from.json";

    private static final String FORMAT = "fallrule-made-from/1";

    private ReportRecord() {}

    /** A report's files with the record of them. */
    static Map<String, byte[]> with(Map<String, byte[]> files, String digest, DocketEntry entry) {
        Map<String, Object> sizes = new LinkedHashMap<>();
        new TreeMap<>(files).forEach((name, bytes) -> sizes.put(name, (long) bytes.length));
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("digest", digest);
        tree.put("files", sizes);
        tree.put("entry", EntryTree.of(entry));
        Map<String, byte[]> all = new LinkedHashMap<>(files);
        all.put(FILE, JsonWriter.bytes(tree));
        return all;
    }

    /** The entry of the report in a folder, if the report is whole and was made from what the digest stands for. */
    static Optional<DocketEntry> entry(Path report, String digest, Submittal site) {
        Path file = report.resolve(FILE);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            Map<String, Object> tree = JsonTree.read(file, file.toString());
            boolean same = FORMAT.equals(tree.get("format")) && digest.equals(tree.get("digest"));
            return same && isWhole(report, tree.get("files")) && tree.get("entry") instanceof Map<?, ?> entry
                    ? Optional.of(EntryTree.read(entry, site.shown(), site.folder()))
                    : Optional.empty();
        } catch (UnusableInput | IllegalArgumentException | IOException e) {
            return Optional.empty();
        }
    }

    private static boolean isWhole(Path report, @Nullable Object sizes) throws IOException {
        if (!(sizes instanceof Map<?, ?> files)) {
            return false;
        }
        for (Map.Entry<?, ?> size : files.entrySet()) {
            Path file = report.resolve(String.valueOf(size.getKey()));
            if (!Files.isRegularFile(file) || !Long.valueOf(Files.size(file)).equals(size.getValue())) {
                return false;
            }
        }
        return true;
    }
}
