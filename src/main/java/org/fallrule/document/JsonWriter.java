package org.fallrule.document;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes a tree of maps, lists, texts, numbers and flags as JSON (RFC 8259), indented or on one line, in UTF-8. What stands in a
 * tree many times may stand in it as {@link Repeated}, what is made only to be written as a {@link Part}.
 */
public final class JsonWriter {
    /** Bytes to begin with; a report has some hundred thousand. */
    private static final int ROOM = 1 << 19;

    /** An object of a tree that puts its members into the writer itself, so that no map of them is made. */
    @FunctionalInterface
    public interface Part {
        void putInto(JsonWriter json);
    }

    /**
     * An object of a tree that stands in it many times, or members that many of its objects have. Their text is made once for
     * all that are the same {@code Repeated} and stand equally deep.
     *
     * @param tree the members
     */
    public record Repeated(Map<String, ?> tree) {}

    /** A list of two numbers, such as a longitude and a latitude. */
    public record Position(double first, double second) {}

    /** Where the members of a part were written, and how deep. */
    private record Written(int start, int end, int depth) {}

    private final boolean isIndented;
    private final IdentityHashMap<Repeated, Written> written = new IdentityHashMap<>();
    private final JsonNames names;
    private final JsonBytes out;
    private int depth;

    private JsonWriter(int room, boolean isIndented) {
        this.out = new JsonBytes(room);
        this.names = new JsonNames(isIndented);
        this.isIndented = isIndented;
    }

    /** The tree as JSON text, with a line end after it. */
    public static String write(Map<String, ?> tree) {
        return indented(tree).text();
    }

    /** The same as a file holds it. A half of a surrogate pair, which no file can hold, is a question mark. */
    public static byte[] bytes(Map<String, ?> tree) {
        return indented(tree).toArray();
    }

    private static JsonBytes indented(Map<String, ?> tree) {
        JsonWriter writer = new JsonWriter(ROOM, true);
        writer.value(tree);
        writer.out.sign('\n');
        return writer.out;
    }

    /** The same on one line, for data within a page. */
    public static String compact(Map<String, ?> tree) {
        JsonWriter writer = new JsonWriter(16, false);
        writer.value(tree);
        return writer.out.text();
    }

    /** A text within quotes, as JSON and YAML read it. */
    static String quoted(String text) {
        JsonBytes quoted = new JsonBytes(text.length() + 2);
        quoted.quoted(text);
        return quoted.text();
    }

    /** Puts a member into the object that is being written: a name, and a value as it may stand in a tree. */
    public void put(String name, @Nullable Object value) {
        name(name);
        value(value);
    }

    /** The same of a value that is an object. */
    public void putPart(String name, Part part) {
        name(name);
        object(part);
    }

    private void name(String name) {
        byte[] before = names.before(name, depth);
        out.copy(before, hasJustBegun() ? 1 : 0, before.length);
    }

    /** Puts all members of a part into the object that is being written. */
    public void putAll(Repeated part) {
        if (part.tree().isEmpty()) {
            return;
        }
        Written before = written.get(part);
        if (before != null && before.depth() == depth) {
            out.ascii(hasJustBegun() ? "" : ",");
            out.again(before.start(), before.end());
        } else {
            int start = out.size() + (hasJustBegun() ? 0 : 1);
            part.tree().forEach(this::put);
            written.put(part, new Written(start, out.size(), depth));
        }
    }

    private void value(@Nullable Object value) {
        if (value instanceof String text) {
            out.quoted(text);
        } else if (value instanceof Double number) {
            out.number(number);
        } else if (value == null || value instanceof Boolean || value instanceof Long || value instanceof Integer) {
            out.ascii(String.valueOf(value));
        } else if (value instanceof Number number) {
            out.number(number.doubleValue());
        } else if (value instanceof Position position) {
            position(position);
        } else {
            composed(value);
        }
    }

    private void composed(Object value) {
        if (value instanceof Repeated part) {
            object(json -> json.putAll(part));
        } else if (value instanceof Part part) {
            object(part);
        } else if (value instanceof Map<?, ?> map) {
            object(json -> map.forEach((name, of) -> json.put(String.valueOf(name), of)));
        } else if (value instanceof List<?> list) {
            array(list);
        } else {
            out.quoted(value.toString());
        }
    }

    private void object(Part part) {
        out.sign('{');
        depth++;
        part.putInto(this);
        outdent();
        out.sign('}');
    }

    private void array(List<?> list) {
        out.sign('[');
        if (isOnePlace(list)) {
            position(list);
        } else {
            depth++;
            for (Object item : list) {
                next();
                value(item);
            }
            outdent();
        }
        out.sign(']');
    }

    /** Before a member or an item: a comma, unless it is the first. */
    private void next() {
        if (!hasJustBegun()) {
            out.sign(',');
        }
        if (isIndented) {
            out.lineEnd(depth);
        }
    }

    /** Whether what is being written has no member or item so far; every one ends with another sign than these. */
    private boolean hasJustBegun() {
        return out.endsWith('{') || out.endsWith('[');
    }

    private void outdent() {
        depth--;
        if (isIndented && hasJustBegun()) {
            out.sign(' ');
        } else if (isIndented) {
            out.lineEnd(depth);
        }
    }

    private static boolean isOnePlace(List<?> list) {
        for (int i = 0; i < list.size(); i++) {
            if (!(list.get(i) instanceof Number number && Double.isFinite(number.doubleValue()))) {
                return false;
            }
        }
        return !list.isEmpty();
    }

    private void position(Position place) {
        if (Double.isFinite(place.first()) && Double.isFinite(place.second())) {
            out.sign('[');
            out.number(place.first());
            out.ascii(", ");
            out.number(place.second());
            out.sign(']');
        } else {
            array(List.of(place.first(), place.second()));
        }
    }

    /** Numbers stand on one line. */
    private void position(List<?> numbers) {
        for (int i = 0; i < numbers.size(); i++) {
            out.ascii(i > 0 ? ", " : "");
            value(numbers.get(i));
        }
    }
}
