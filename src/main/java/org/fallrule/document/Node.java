package org.fallrule.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A value in a YAML document, with the place where it stands. */
public sealed interface Node {

    Place place();

    /** What the value is, for messages: {@code a list}. */
    String kind();

    /**
     * A single value.
     *
     * @param text its text without quotes
     * @param blank whether nothing, {@code ~}, {@code null} or an empty text was written
     */
    record Scalar(Place place, String text, boolean blank) implements Node {
        @Override
        public String kind() {
            return blank ? "nothing" : "\"" + Excerpt.of(text) + "\"";
        }
    }

    /** A list. */
    record Sequence(Place place, List<Node> items) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }

    /** Keys with values, in the order written; {@code keyPlaces} says where each key stands. */
    record Mapping(Place place, Map<String, Node> entries, Map<String, Place> keyPlaces) implements Node {
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
            keyPlaces = Map.copyOf(keyPlaces);
        }

        public static Mapping empty(Place place) {
            return new Mapping(place, Map.of(), Map.of());
        }

        public Optional<Node> get(String key) {
            return Optional.ofNullable(entries.get(key));
        }

        public Place placeOf(String key) {
            return keyPlaces.getOrDefault(key, place);
        }

        /** This mapping with the other's entries laid over it, key by key. */
        public Mapping overlaid(Mapping over) {
            Map<String, Node> merged = new LinkedHashMap<>(entries);
            merged.putAll(over.entries);
            Map<String, Place> places = new LinkedHashMap<>(keyPlaces);
            places.putAll(over.keyPlaces);
            return new Mapping(place, merged, places);
        }

        @Override
        public String kind() {
            return "keys with values";
        }
    }
}
