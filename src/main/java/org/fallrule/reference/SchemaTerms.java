package org.fallrule.reference;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;

/** Pieces of JSON Schema (draft 2020-12) for what stands in rule books and site.yaml. */
final class SchemaTerms {
    static final String DIALECT = "https://json-schema.org/draft/2020-12/schema";
    /** Letters that mean something in a pattern. */
    private static final Pattern SPECIAL = Pattern.compile("[.*+?^${}()|\\[\\]\\\\]");

    private SchemaTerms() {}

    /** A mapping in the order written: key, value, key, value. */
    static Map<String, Object> object(Object... entries) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < entries.length; i += 2) {
            map.put(String.valueOf(entries[i]), entries[i + 1]);
        }
        return map;
    }

    static Map<String, Object> words(Collection<String> words) {
        return object("enum", List.copyOf(words));
    }

    /** A single value; what looks like a number or a date is text all the same. */
    static Map<String, Object> text(String meaning) {
        return object("description", meaning, "type", List.of("string", "number", "boolean"));
    }

    static Map<String, Object> flag() {
        return object("type", "boolean");
    }

    /** A day. YAML readers give it as text. */
    static Map<String, Object> day(String meaning) {
        return object("description", meaning, "type", "string", "pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$");
    }

    /** An object that holds only these keys. */
    static Map<String, Object> closed(Map<String, Object> properties, Collection<String> required) {
        Map<String, Object> closed = object("type", "object", "properties", properties, "additionalProperties", false);
        if (!required.isEmpty()) {
            closed.put("required", List.copyOf(required));
        }
        return closed;
    }

    static Map<String, Object> anyOf(List<?> forms) {
        return object("anyOf", forms);
    }

    /** A number with its unit; it points at {@link #quantities}. */
    static Map<String, Object> quantity(Dimension dimension) {
        return object("$ref", "#/$defs/" + dimension.word());
    }

    /** The same of which only some amounts make sense; a pattern tells that of a number without a unit alone. */
    static Map<String, Object> quantity(Dimension dimension, Range range) {
        Map<String, Object> quantity = quantity(dimension);
        if (dimension == Dimension.RATIO) {
            quantity.put(range.leastItself() ? "minimum" : "exclusiveMinimum", range.least());
            if (range.hasGreatest()) {
                quantity.put("maximum", range.greatest());
            }
        }
        return quantity;
    }

    /** The definitions of the quantities of every dimension. */
    static Map<String, Object> quantities() {
        Map<String, Object> all = new LinkedHashMap<>();
        for (Dimension dimension : Dimension.values()) {
            all.put(dimension.word(), written(dimension));
        }
        return all;
    }

    private static Map<String, Object> written(Dimension dimension) {
        if (dimension == Dimension.RATIO) {
            return object(
                    "type",
                    List.of("number", "string"),
                    "description",
                    "a number, such as " + dimension.example(),
                    "pattern",
                    "^\\s*[-+]?[0-9.][0-9.eE+-]*\\s*$");
        }
        String units = units(dimension).stream().map(SchemaTerms::escaped).collect(Collectors.joining("|"));
        String pattern = "^\\s*[-+]?[0-9.][0-9./ eE+-]*(" + units + ")\\s*$"
                + (dimension == Dimension.SLOPE ? "|^[0-9.]+ *: *[0-9.]+$" : "");
        return object(
                "description",
                "the " + dimension.word() + " with its unit, such as " + dimension.example(),
                "type",
                "string",
                "pattern",
                pattern);
    }

    /** The words of every unit of a dimension. */
    static List<String> units(Dimension dimension) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .flatMap(unit -> unit.words().stream())
                .distinct()
                .toList();
    }

    private static String escaped(String word) {
        return SPECIAL.matcher(word).replaceAll(sign -> Matcher.quoteReplacement("\\" + sign.group()));
    }
}
