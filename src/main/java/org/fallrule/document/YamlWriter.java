package org.fallrule.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes keys with values as YAML: one key to a line down to the second level, what lies deeper within braces. Text that could
 * be read as something else stands in quotes.
 */
public final class YamlWriter {
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_./+-]*");

    private YamlWriter() {}

    /** The tree of maps, lists and texts as a YAML document. */
    public static String write(Map<String, ?> tree) {
        StringBuilder text = new StringBuilder();
        tree.forEach((key, value) -> {
            text.append(scalar(key)).append(':');
            if (value instanceof Map<?, ?> map && !map.isEmpty()) {
                map.forEach((inner, of) -> text.append("\n  ")
                        .append(scalar(String.valueOf(inner)))
                        .append(": ")
                        .append(flow(of)));
            } else {
                text.append(' ').append(flow(value));
            }
            text.append('\n');
        });
        return text.toString();
    }

    /** A value as it was read, to be written again. */
    public static Object tree(Node node) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Object> map = new LinkedHashMap<>();
            mapping.entries().forEach((key, value) -> map.put(key, tree(value)));
            return map;
        }
        if (node instanceof Node.Sequence sequence) {
            return sequence.items().stream().map(YamlWriter::tree).toList();
        }
        return ((Node.Scalar) node).text();
    }

    private static String flow(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(entry -> scalar(String.valueOf(entry.getKey())) + ": " + flow(entry.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(YamlWriter::flow).collect(Collectors.joining(", ", "[", "]"));
        }
        return scalar(String.valueOf(value));
    }

    private static String scalar(String text) {
        return PLAIN.matcher(text).matches() ? text : JsonWriter.quoted(text);
    }
}
