package org.fallrule.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Writes a tree of maps, lists, texts, numbers and flags as indented JSON. */
public final class JsonWriter {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** Bytes to begin with; a report has some hundred thousand. */
    private static final int ROOM = 1 << 16;

    private final JsonGenerator out;

    private JsonWriter(JsonGenerator out) {
        this.out = out;
    }

    /** The tree as JSON text, with a line end after it. */
    public static String write(Map<String, ?> tree) {
        return new String(bytes(tree), StandardCharsets.UTF_8);
    }

    /** The same as a file holds it. */
    public static byte[] bytes(Map<String, ?> tree) {
        ByteArrayOutputStream text = new ByteArrayOutputStream(ROOM);
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            generator.setPrettyPrinter(printer);
            new JsonWriter(generator).value(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        text.write('\n');
        return text.toByteArray();
    }

    /** The same on one line, for data within a page. */
    public static String compact(Map<String, ?> tree) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
            new JsonWriter(generator).value(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** A text within quotes, as JSON and YAML read it. */
    static String quoted(String text) {
        return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    private void value(@Nullable Object value) throws IOException {
        if (value == null) {
            out.writeNull();
        } else if (value instanceof Map<?, ?> map) {
            object(map);
        } else if (value instanceof List<?> list) {
            array(list);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof Long || value instanceof Integer) {
            out.writeNumber(((Number) value).longValue());
        } else if (value instanceof Number number) {
            number(number.doubleValue());
        } else {
            out.writeString(String.valueOf(value));
        }
    }

    private void object(Map<?, ?> map) throws IOException {
        out.writeStartObject();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            out.writeFieldName(String.valueOf(entry.getKey()));
            value(entry.getValue());
        }
        out.writeEndObject();
    }

    private void array(List<?> list) throws IOException {
        if (isOnePlace(list)) {
            position(list);
            return;
        }
        out.writeStartArray();
        for (Object item : list) {
            value(item);
        }
        out.writeEndArray();
    }

    /** JSON (RFC 8259, section 6) has no word for a number that is infinite or not one. */
    private void number(double number) throws IOException {
        if (Double.isFinite(number)) {
            out.writeNumber(number);
        } else {
            out.writeNull();
        }
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
    private void position(List<?> numbers) throws IOException {
        StringBuilder text = new StringBuilder("[");
        for (Object number : numbers) {
            text.append(text.length() > 1 ? ", " : "").append(number);
        }
        out.writeRawValue(text.append(']').toString());
    }
}
