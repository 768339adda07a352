package org.fallrule.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A small file of JSON as maps, lists, texts, numbers and flags; nothing is kept of a value that is null. */
public final class JsonTree {
    private final JsonStream json;

    private JsonTree(JsonStream json) {
        this.json = json;
    }

    /**
     * Reads a file that holds one object.
     *
     * @param shownAs the path to show in messages
     * @throws UnusableInput when it cannot be read, is not JSON or holds something else
     */
    public static Map<String, Object> read(Path file, String shownAs) {
        try (JsonStream json = JsonStream.open(file, shownAs)) {
            if (json.next() != JsonStream.Token.OBJECT_START) {
                throw json.fault("found " + json.found() + "; wanted an object");
            }
            Map<String, Object> tree = new JsonTree(json).object();
            if (json.next() != JsonStream.Token.END) {
                throw json.fault("found " + json.found() + " after the object; wanted the end of the file");
            }
            return tree;
        }
    }

    private Map<String, Object> object() {
        Map<String, Object> tree = new LinkedHashMap<>();
        while (json.next() == JsonStream.Token.NAME) {
            String name = json.text();
            if (json.next() != JsonStream.Token.NULL) {
                tree.put(name, value());
            }
        }
        return Collections.unmodifiableMap(tree);
    }

    private List<Object> array() {
        List<Object> items = new ArrayList<>();
        while (json.next() != JsonStream.Token.ARRAY_END) {
            if (json.token() != JsonStream.Token.NULL) {
                items.add(value());
            }
        }
        return List.copyOf(items);
    }

    private Object value() {
        return switch (json.token()) {
            case OBJECT_START -> object();
            case ARRAY_START -> array();
            case NUMBER -> json.longOrDouble();
            case BOOLEAN -> json.bool();
            default -> json.text();
        };
    }
}
