package org.fallrule.document;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.nio.charset.StandardCharsets;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes a tree of maps, lists, texts, numbers and flags as JSON (RFC 8259), indented or on one line. A report of many findings is
 * mostly line ends, names and texts that need no escape; these are copied whole.
 */
public final class JsonWriter {
    /** Characters to begin with; a report has some hundred thousand. */
    private static final int ROOM = 1 << 19;

    private static final String NAME_END = " : ";

    /**
     * A part of a tree that stands in it many times. Its text is made once for all that are the same object.
     *
     * @param tree the part
     */
    public record Repeated(Map<String, ?> tree) {}

    private record Written(String text, int indent) {}

    private final StringBuilder out;
    private final boolean isIndented;
    private final StringBuilder lineEnd = new StringBuilder("\n");
    private final IdentityHashMap<Repeated, Written> written = new IdentityHashMap<>();

    private JsonWriter(int room, boolean isIndented) {
        this.out = new StringBuilder(room);
        this.isIndented = isIndented;
    }

    /** The tree as JSON text, with a line end after it. */
    public static String write(Map<String, ?> tree) {
        JsonWriter writer = new JsonWriter(ROOM, true);
        writer.value(tree);
        return writer.out.append('\n').toString();
    }

    /** The same as a file holds it. */
    public static byte[] bytes(Map<String, ?> tree) {
        return write(tree).getBytes(StandardCharsets.UTF_8);
    }

    /** The same on one line, for data within a page. */
    public static String compact(Map<String, ?> tree) {
        JsonWriter writer = new JsonWriter(16, false);
        writer.value(tree);
        return writer.out.toString();
    }

    /** A text within quotes, as JSON and YAML read it. */
    static String quoted(String text) {
        JsonWriter writer = new JsonWriter(text.length() + 2, false);
        writer.text(text);
        return writer.out.toString();
    }

    private void value(@Nullable Object value) {
        if (value instanceof String text) {
            text(text);
        } else if (value instanceof Map<?, ?> map) {
            object(map);
        } else if (value instanceof List<?> list) {
            array(list);
        } else if (value instanceof Repeated part) {
            repeated(part);
        } else if (value == null || value instanceof Boolean || value instanceof Long || value instanceof Integer) {
            out.append(value);
        } else if (value instanceof Number number) {
            number(number.doubleValue());
        } else {
            text(String.valueOf(value));
        }
    }

    private void object(Map<?, ?> map) {
        out.append('{');
        indent();
        boolean isFirst = true;
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            next(isFirst);
            isFirst = false;
            text(String.valueOf(entry.getKey()));
            out.append(isIndented ? NAME_END : ":");
            value(entry.getValue());
        }
        outdent(map.isEmpty());
        out.append('}');
    }

    private void repeated(Repeated part) {
        Written before = written.get(part);
        if (before != null && before.indent() == lineEnd.length()) {
            out.append(before.text());
            return;
        }
        int start = out.length();
        object(part.tree());
        written.put(part, new Written(out.substring(start), lineEnd.length()));
    }

    private void array(List<?> list) {
        if (isOnePlace(list)) {
            position(list);
            return;
        }
        out.append('[');
        indent();
        for (int i = 0; i < list.size(); i++) {
            next(i == 0);
            value(list.get(i));
        }
        outdent(list.isEmpty());
        out.append(']');
    }

    private void indent() {
        lineEnd.append("  ");
    }

    private void next(boolean isFirst) {
        if (!isFirst) {
            out.append(',');
        }
        if (isIndented) {
            out.append(lineEnd);
        }
    }

    private void outdent(boolean isEmpty) {
        lineEnd.setLength(lineEnd.length() - 2);
        if (isIndented && isEmpty) {
            out.append(' ');
        } else if (isIndented) {
            out.append(lineEnd);
        }
    }

    private void text(String text) {
        out.append('"');
        if (isPlain(text)) {
            out.append(text);
        } else {
            JsonStringEncoder.getInstance().quoteAsString(text, out);
        }
        out.append('"');
    }

    /** Whether a text has nothing that JSON wants escaped. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign < ' ' || sign == '"' || sign == '\\') {
                return false;
            }
        }
        return true;
    }

    /** JSON (RFC 8259, section 6) has no word for a number that is infinite or not one. */
    private void number(double number) {
        out.append(Double.isFinite(number) ? NumberOutput.toString(number, true) : "null");
    }

    private static boolean isOnePlace(List<?> list) {
        for (Object item : list) {
            if (!(item instanceof Number number && Double.isFinite(number.doubleValue()))) {
                return false;
            }
        }
        return !list.isEmpty();
    }

    /** Numbers stand on one line. */
    private void position(List<?> numbers) {
        out.append('[');
        for (int i = 0; i < numbers.size(); i++) {
            out.append(i > 0 ? ", " : "");
            value(numbers.get(i));
        }
        out.append(']');
    }
}
