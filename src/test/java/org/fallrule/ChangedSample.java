package org.fallrule;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The files of a sample site with changes that a fuzzer picks: a number or a word that is another, a line that is missing, twice or
 * in another file. What comes of it can mostly be read, and so gets past the readers, to the rules and the drawings.
 */
public final class ChangedSample {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");
    private static final Pattern WORD = Pattern.compile("[A-Za-z_]{2,}");
    private static final String[] NUMBERS = {
        "0", "-0", "-1", "1", "1e-9", "1e9", "1e308", "-1e308", "4e-324", "0.1", "99999999999999999999", "NaN", "null"
    };
    private static final int MOST_CHANGES = 6;

    private final FuzzedDataProvider data;
    private final Map<String, String> files = new TreeMap<>();

    private ChangedSample(FuzzedDataProvider data) {
        this.data = data;
    }

    /** The files of a sample site, by name, after some changes. */
    public static Map<String, byte[]> of(Path sample, FuzzedDataProvider data) {
        ChangedSample changed = new ChangedSample(data);
        changed.read(sample);
        for (int left = data.consumeInt(1, MOST_CHANGES); left > 0; left--) {
            changed.change();
        }
        Map<String, byte[]> bytes = new TreeMap<>();
        changed.files.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return bytes;
    }

    private void read(Path sample) {
        try (Stream<Path> all = Files.list(sample)) {
            for (Path file : all.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".yaml") || name.endsWith("json")) {
                    files.put(name, Files.readString(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void change() {
        String name = data.pickValue(files.keySet().toArray(new String[0]));
        String text = files.getOrDefault(name, "");
        switch (data.consumeInt(0, 5)) {
            case 0 -> files.put(name, replaced(text, NUMBER, data.pickValue(NUMBERS)));
            case 1 -> files.put(name, replaced(text, NUMBER, String.valueOf(data.consumeRegularDouble(-1000, 1000))));
            case 2 -> files.put(name, replaced(text, WORD, picked(text, WORD)));
            case 3 -> files.put(name, replaced(text, NUMBER, picked(text, NUMBER)));
            case 4 -> files.put(name, lines(text));
            default -> files.put(name, replaced(text, WORD, data.consumeString(12)));
        }
    }

    private String picked(String text, Pattern pattern) {
        List<MatchResult> all = pattern.matcher(text).results().toList();
        return all.isEmpty() ? "" : all.get(data.consumeInt(0, all.size() - 1)).group();
    }

    private String replaced(String text, Pattern pattern, String by) {
        List<MatchResult> all = pattern.matcher(text).results().toList();
        if (all.isEmpty()) {
            return text;
        }
        MatchResult one = all.get(data.consumeInt(0, all.size() - 1));
        return text.substring(0, one.start()) + by + text.substring(one.end());
    }

    private String lines(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        String line = lines.remove(data.consumeInt(0, lines.size() - 1));
        for (int copies = data.consumeInt(0, 2); copies > 0; copies--) {
            lines.add(data.consumeInt(0, lines.size()), line);
        }
        return String.join("\n", lines) + "\n";
    }
}
