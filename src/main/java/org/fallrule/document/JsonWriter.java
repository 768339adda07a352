package org.fallrule.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** Writes a tree of maps, lists, texts, numbers and flags as indented JSON. */
public final class JsonWriter {
    private final JsonGenerator out;

    private JsonWriter(JsonGenerator out) {
        this.out = out;
    }

    /** The tree as JSON text, with a line end after it. */
    public static String write(Map<String, ?> tree) {
        StringWriter text = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
            generator.setPrettyPrinter(printer);
            new JsonWriter(generator).value(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.append('\n').toString();
    }

    private void value(Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            object(map);
        } else if (value instanceof List<?> list) {
            array(list);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof Long || value instanceof Integer) {
            out.writeNumber(((Number) value).longValue());
        } else if (value instanceof Number number) {
            out.writeNumber(number.doubleValue());
        } else {
            out.writeString(String.valueOf(value));
        }
    }

    private void object(Map<?, ?> map) throws IOException {
        out.writeStartObject();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            out.writeFieldName(String.valueOf(entry.getKey()));
            if (entry.getValue() == null) {
                out.writeNull();
            } else {
                value(entry.getValue());
            }
        }
        out.writeEndObject();
    }

    private void array(List<?> list) throws IOException {
        boolean onePlace = !list.isEmpty() && list.stream().allMatch(item -> item instanceof Number);
        if (onePlace) {
            position(list);
            return;
        }
        out.writeStartArray();
        for (Object item : list) {
            value(item);
        }
        out.writeEndArray();
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
