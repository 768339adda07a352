package org.fallrule.reader.geojson;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;

/** Reads a feature's {@code properties} (RFC 7946, section 3.2) as attribute values. */
final class PropertiesReader {
    private final JsonStream json;
    private final LayerNotes notes;
    private final Set<String> columns = new LinkedHashSet<>();

    PropertiesReader(JsonStream json, LayerNotes notes) {
        this.json = json;
        this.notes = notes;
    }

    /** The names of all properties read so far. */
    Set<String> columns() {
        return columns;
    }

    /**
     * The value of a {@code properties} member: an object, or null for none.
     *
     * @param names takes every property's name, those with null for a value too
     */
    Map<String, Object> read(Set<String> names) {
        Map<String, Object> values = new LinkedHashMap<>();
        if (json.token() == Token.NULL) {
            return values;
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
            columns.add(name);
            json.next();
            put(name, values);
        }
        return values;
    }

    private void put(String name, Map<String, Object> values) {
        switch (json.token()) {
            case TEXT -> values.put(name, json.text());
            case NUMBER -> values.put(name, json.longOrDouble());
            case BOOLEAN -> values.put(name, json.bool());
            case OBJECT_START, ARRAY_START -> values.put(name, json.json());
            default -> values.remove(name);
        }
    }
}
