package org.fallrule.reference;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.method.Method;
import org.fallrule.method.PublishedValue;
import org.fallrule.method.PublishedValues;

/** The page of a method of calculation, in Markdown. */
public final class MethodReference {
    private MethodReference() {}

    public static String page(Method method) {
        StringBuilder text = new StringBuilder();
        text.append("# ").append(method.title()).append("\n\n");
        text.append(method.gives()).append("\n\n");
        text.append("## Formula\n\n");
        method.formulas().forEach(formula -> text.append("    ").append(formula).append('\n'));
        heading(text, "symbol", "meaning", "unit");
        method.symbols().forEach(symbol -> row(text, symbol.sign(), symbol.meaning(), symbol.unit()));
        list(text, "Source", method.sources());
        list(text, "Limits", method.limits());
        checkValues(text, PublishedValues.of(method.name()));
        return text.toString();
    }

    private static void checkValues(StringBuilder text, List<PublishedValue> values) {
        text.append("\n## Check values\n");
        if (values.isEmpty()) {
            text.append("\nNo published figure was found to check it against.\n");
        }
        bySource(values).forEach((source, figures) -> {
            text.append("\n").append(source).append(":\n");
            heading(text, "quantity", "given", "published", "computed here", "may differ by");
            figures.forEach(each -> row(
                    text,
                    each.what(),
                    inputs(each),
                    (each.published() + " " + each.unit()).strip(),
                    each.ours(),
                    each.within()));
        });
    }

    private static Map<String, List<PublishedValue>> bySource(List<PublishedValue> values) {
        return values.stream()
                .collect(Collectors.groupingBy(
                        each -> each.source() + " (" + each.known() + ")", LinkedHashMap::new, Collectors.toList()));
    }

    private static String inputs(PublishedValue value) {
        return value.inputs().entrySet().stream()
                .map(input -> input.getKey() + " " + input.getValue())
                .collect(Collectors.joining(", "));
    }

    private static void heading(StringBuilder text, String... titles) {
        text.append('\n');
        row(text, titles);
        row(text, Collections.nCopies(titles.length, "---").toArray(String[]::new));
    }

    private static void row(StringBuilder text, String... cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static void list(StringBuilder text, String title, List<String> lines) {
        text.append("\n## ").append(title).append("\n\n");
        lines.forEach(line -> text.append("- ").append(line).append('\n'));
    }
}
