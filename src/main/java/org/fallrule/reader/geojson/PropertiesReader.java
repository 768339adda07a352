package org.fallrule.reader.geojson;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;

/** Reads a feature's {@code properties} (RFC 7946, section 3.2) as attribute values. */
final class PropertiesReader {
    private final JsonStream json;
    private final LayerNotes notes;

    PropertiesReader(JsonStream json, LayerNotes notes) {
        this.json = json;
        this.notes = notes;
    }

    /**
     * The value of a {@code properties} member: an object, or null for none.
     *
     * @param names takes every property's name, those with null for a value too
     */
    Map<String, Object> read(Set<String> names) {
        Map<String, Object> columns = new LinkedHashMap<>();
        if (json.token() == Token.NULL) {
            return columns;
        }
        if (json.token() != Token.OBJECT_START) {
            throw json.fault("\"properties\" is " + json.found() + "; wanted an object, or null");
        }
        while (json.next() == Token.NAME) {
            String name = json.text();
            if (json.repeatedName()) {
                notes.count(LayerNotes.Kind.REPEATED_PROPERTY, json.here().field(name));
            }
            names.add(name);
            json.next();
            put(name, columns);
        }
        return columns;
    }

    private void put(String name, Map<String, Object> columns) {
        switch (json.token()) {
            case TEXT -> columns.put(name, json.text());
            case NUMBER -> columns.put(name, json.longOrDouble());
            case BOOLEAN -> columns.put(name, json.bool());
            case OBJECT_START, ARRAY_START -> columns.put(name, json.json());
            default -> columns.remove(name);
        }
    }
}
