package org.fallrule.verification;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Yaml;

/**
 * A figure that a code prints, and the rule that rests on it.
 *
 * @param what the quantity
 * @param published the figure with its unit, as printed
 * @param source the code and its section
 * @param known how the figure is known
 * @param rule the rule of the baseline
 * @param key the key of the rule that asks it
 * @param differs why the rule asks otherwise, if it does
 */
record CodeFigure(
        String what, String published, String source, String known, String rule, String key, Optional<String> differs) {
    private static final String FILE = "code-figures.yaml";

    static List<CodeFigure> all() {
        List<Fault> faults = new ArrayList<>();
        List<CodeFigure> all = new ArrayList<>();
        for (Node group : new Keys(Yaml.parse(text(), FILE), faults).list("figures")) {
            Keys shared = new Keys((Node.Mapping) group, faults);
            for (Node row : shared.list("rows")) {
                all.add(of(new Keys(shared.mapping().overlaid((Node.Mapping) row), faults)));
            }
        }
        if (!faults.isEmpty()) {
            throw new AssertionError(faults);
        }
        return all;
    }

    private static CodeFigure of(Keys keys) {
        return new CodeFigure(
                required(keys, "what"),
                required(keys, "published"),
                required(keys, "source"),
                required(keys, "known"),
                required(keys, "rule"),
                required(keys, "key"),
                keys.text("differs"));
    }

    private static String required(Keys keys, String key) {
        return keys.required(key, "it").map(Node.Scalar::text).orElse("");
    }

    private static String text() {
        try (InputStream in = Objects.requireNonNull(CodeFigure.class.getResourceAsStream(FILE), FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
