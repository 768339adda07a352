package org.fallrule.document;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes a tree of maps, lists, texts, numbers and flags as JSON (RFC 8259), indented or on one line, in UTF-8. A report of many
 * findings is mostly line ends, names and texts of ASCII that need no escape; these are copied as they are.
 */
public final class JsonWriter {
    /** Bytes to begin with; a report has some hundred thousand. */
    private static final int ROOM = 1 << 19;

    private static final int STEP = 2;

    /**
     * A part of a tree that stands in it many times. Its text is made once for all that are the same object.
     *
     * @param tree the part
     */
    public record Repeated(Map<String, ?> tree) {}

    /** Where a part was written. */
    private record Written(int start, int end, int depth) {}

    private final boolean isIndented;
    private final IdentityHashMap<Repeated, Written> written = new IdentityHashMap<>();
    private byte[] out;
    private int size;
    private int depth;

    private JsonWriter(int room, boolean isIndented) {
        this.out = new byte[room];
        this.isIndented = isIndented;
    }

    /** The tree as JSON text, with a line end after it. */
    public static String write(Map<String, ?> tree) {
        return indented(tree).text();
    }

    /** The same as a file holds it. A half of a surrogate pair, which no file can hold, is a question mark. */
    public static byte[] bytes(Map<String, ?> tree) {
        JsonWriter writer = indented(tree);
        return Arrays.copyOf(writer.out, writer.size);
    }

    private static JsonWriter indented(Map<String, ?> tree) {
        JsonWriter writer = new JsonWriter(ROOM, true);
        writer.value(tree);
        writer.ascii("\n");
        return writer;
    }

    /** The same on one line, for data within a page. */
    public static String compact(Map<String, ?> tree) {
        JsonWriter writer = new JsonWriter(16, false);
        writer.value(tree);
        return writer.text();
    }

    /** A text within quotes, as JSON and YAML read it. */
    static String quoted(String text) {
        JsonWriter writer = new JsonWriter(text.length() + 2, false);
        writer.text(text);
        return writer.text();
    }

    private String text() {
        return new String(out, 0, size, StandardCharsets.UTF_8);
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
            ascii(String.valueOf(value));
        } else if (value instanceof Number number) {
            number(number.doubleValue());
        } else {
            text(value.toString());
        }
    }

    private void object(Map<?, ?> map) {
        ascii("{");
        depth++;
        boolean isFirst = true;
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            next(isFirst);
            isFirst = false;
            text(String.valueOf(entry.getKey()));
            ascii(isIndented ? " : " : ":");
            value(entry.getValue());
        }
        outdent(map.isEmpty());
        ascii("}");
    }

    private void repeated(Repeated part) {
        Written before = written.get(part);
        if (before != null && before.depth() == depth) {
            copy(out, before.start(), before.end());
            return;
        }
        int start = size;
        object(part.tree());
        written.put(part, new Written(start, size, depth));
    }

    private void array(List<?> list) {
        if (isOnePlace(list)) {
            position(list);
            return;
        }
        ascii("[");
        depth++;
        for (int i = 0; i < list.size(); i++) {
            next(i == 0);
            value(list.get(i));
        }
        outdent(list.isEmpty());
        ascii("]");
    }

    private void next(boolean isFirst) {
        if (!isFirst) {
            ascii(",");
        }
        if (isIndented) {
            lineEnd();
        }
    }

    private void outdent(boolean isEmpty) {
        depth--;
        if (isIndented && isEmpty) {
            ascii(" ");
        } else if (isIndented) {
            lineEnd();
        }
    }

    private void lineEnd() {
        makeRoom(1 + STEP * depth);
        out[size++] = '\n';
        Arrays.fill(out, size, size + STEP * depth, (byte) ' ');
        size += STEP * depth;
    }

    private void text(String text) {
        makeRoom(text.length() + 2);
        out[size++] = '"';
        int plain = plain(text);
        if (plain < text.length()) {
            escaped(text.substring(plain));
        }
        ascii("\"");
    }

    /** Writes what a text begins with that is ASCII and needs no escape, and says how much that is. There must be room. */
    private int plain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign < ' ' || sign > '~' || sign == '"' || sign == '\\') {
                return i;
            }
            out[size++] = (byte) sign;
        }
        return text.length();
    }

    private void escaped(String text) {
        StringBuilder quoted = new StringBuilder();
        JsonStringEncoder.getInstance().quoteAsString(text, quoted);
        byte[] bytes = quoted.toString().getBytes(StandardCharsets.UTF_8);
        copy(bytes, 0, bytes.length);
    }

    private void copy(byte[] from, int start, int end) {
        makeRoom(end - start);
        System.arraycopy(from, start, out, size, end - start);
        size += end - start;
    }

    private void ascii(String signs) {
        makeRoom(signs.length());
        for (int i = 0; i < signs.length(); i++) {
            out[size++] = (byte) signs.charAt(i);
        }
    }

    private void makeRoom(int more) {
        if (size + more > out.length) {
            out = Arrays.copyOf(out, Math.max(2 * out.length, size + more));
        }
    }

    /** JSON (RFC 8259, section 6) has no word for a number that is infinite or not one. */
    private void number(double number) {
        ascii(Double.isFinite(number) ? NumberOutput.toString(number, true) : "null");
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
        ascii("[");
        for (int i = 0; i < numbers.size(); i++) {
            ascii(i > 0 ? ", " : "");
            value(numbers.get(i));
        }
        ascii("]");
    }
}
