package org.fallrule.method;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;

/** The figures from outside that each method is held against; what they mean stands at the head of their file. */
public final class PublishedValues {
    /** The file, beside this class. */
    public static final String FILE = "check-values.yaml";

    private static final Set<String> OF_THE_FIGURE =
            Set.of("source", "known", "what", "unit", "published", "within", "ours", "rows");

    private PublishedValues() {}

    /** The figures of a method by its name; none where nobody has printed one that was found. */
    public static List<PublishedValue> of(String method) {
        return all().getOrDefault(method, List.of());
    }

    /** All figures, by the names of the methods. */
    public static Map<String, List<PublishedValue>> all() {
        try (InputStream in = Objects.requireNonNull(PublishedValues.class.getResourceAsStream(FILE), FILE)) {
            return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Map<String, List<PublishedValue>> parse(String text) {
        Node.Mapping file = Yaml.parse(text, FILE);
        Map<String, List<PublishedValue>> all = new LinkedHashMap<>();
        List<Fault> faults = new ArrayList<>();
        Keys methods = new Keys(file, faults);
        for (String method : file.entries().keySet()) {
            List<PublishedValue> values = new ArrayList<>();
            for (Node group : methods.list(method)) {
                Keys shared = new Keys((Node.Mapping) group, faults);
                shared.list("rows").forEach(row -> values.add(value(shared.mapping(), (Node.Mapping) row, faults)));
            }
            all.put(method, values);
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return all;
    }

    private static PublishedValue value(Node.Mapping shared, Node.Mapping row, List<Fault> faults) {
        Keys keys = new Keys(shared.overlaid(row), faults);
        return new PublishedValue(
                row.place(),
                text(keys, "what"),
                inputs(keys.mapping()),
                text(keys, "published"),
                text(keys, "within"),
                text(keys, "ours"),
                keys.text("unit").orElse(""),
                text(keys, "source"),
                text(keys, "known"));
    }

    private static String text(Keys keys, String key) {
        return keys.required(key, "it in the row or beside the rows")
                .map(Node.Scalar::text)
                .orElse("0");
    }

    private static Map<String, String> inputs(Node.Mapping keys) {
        return Collections.unmodifiableMap(keys.entries().entrySet().stream()
                .filter(entry -> !OF_THE_FIGURE.contains(entry.getKey()))
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> ((Node.Scalar) entry.getValue()).text(),
                        (one, other) -> one,
                        LinkedHashMap::new)));
    }
}
