package org.fallrule.reference;

import static org.fallrule.reference.SchemaTerms.anyOf;
import static org.fallrule.reference.SchemaTerms.closed;
import static org.fallrule.reference.SchemaTerms.day;
import static org.fallrule.reference.SchemaTerms.object;
import static org.fallrule.reference.SchemaTerms.quantity;
import static org.fallrule.reference.SchemaTerms.text;
import static org.fallrule.reference.SchemaTerms.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** The JSON Schema (draft 2020-12) of site.yaml, made from the roles, their attributes and the units. */
public final class SiteSchema {
    private SiteSchema() {}

    public static String write() {
        Map<String, Object> properties = object(
                "site", text("the name that the report shows"),
                "county", text("picks rules/counties/NAME.yaml"),
                "house", text("picks rules/house/NAME.yaml"),
                "crs", text("the coordinate reference system of layers that do not say themselves, such as EPSG:2264"),
                "datum", text("the vertical datum"),
                "layers_from", text("a profile of columns, a .yaml file at most three folders up"),
                "units", object("$ref", "#/$defs/units"),
                "survey", survey(),
                "absent", anyOf(List.of(roles(), object("type", "array", "items", roles()))),
                "layers", layers(),
                "waivers", object("type", "array", "items", waiver()),
                "storm", object("type", "object"));
        Map<String, Object> schema = object(
                "$schema", SchemaTerms.DIALECT,
                "title", "What a site folder of Fallrule holds",
                "description", "Written by the build from the roles and attributes; not to be edited.");
        schema.putAll(closed(properties, List.of()));
        schema.put("$defs", definitions());
        return JsonWriter.write(schema);
    }

    /** What a schema with {@link #layers} in it points at. */
    static Map<String, Object> definitions() {
        Map<String, Object> definitions = object("units", units());
        for (Role role : Role.values()) {
            definitions.put(definition(role), layer(role, text("the layer's file"), List.of("file")));
        }
        definitions.putAll(SchemaTerms.quantities());
        return definitions;
    }

    static Map<String, Object> roles() {
        return words(Role.words());
    }

    static Map<String, Object> units() {
        Map<String, Object> units = new LinkedHashMap<>();
        for (Attribute<?> attribute : Attribute.all()) {
            attribute
                    .dimension()
                    .ifPresent(dimension -> units.put(attribute.name(), words(SchemaTerms.units(dimension))));
        }
        units.putIfAbsent(Attribute.ELEVATION.name(), words(SchemaTerms.units(Dimension.ELEVATION)));
        return closed(units, List.of());
    }

    private static Map<String, Object> survey() {
        return closed(
                object(
                        "date", day("when it was surveyed"),
                        "source", text("by what means"),
                        "horizontal_accuracy", quantity(Dimension.LENGTH),
                        "vertical_accuracy", quantity(Dimension.LENGTH)),
                List.of());
    }

    static Map<String, Object> layers() {
        Map<String, Object> layers = new LinkedHashMap<>();
        for (Role role : Role.values()) {
            layers.put(role.word(), files(role));
        }
        return closed(layers, List.of());
    }

    /** What there is to say of a layer. */
    static Map<String, Object> layer(Role role, Map<String, Object> file, List<String> required) {
        Map<String, Object> fields = new LinkedHashMap<>();
        Map<String, Object> values = new LinkedHashMap<>();
        Map<String, Object> all = new LinkedHashMap<>();
        for (Attribute<?> attribute : Attribute.of(role)) {
            fields.put(attribute.name(), object("description", attribute.meaning(), "type", "string"));
            values.put(attribute.name(), object("type", "object"));
            all.put(attribute.name(), text("what holds for every feature that says nothing else"));
        }
        Map<String, Object> properties = object(
                "file", file,
                "table", text("the table of a file that holds several"),
                "crs", text("its coordinate reference system, where the file does not say"),
                "datum", text("the vertical datum of its heights, where the file does not say"),
                "fields", closed(fields, List.of()),
                "units", object("$ref", "#/$defs/units"),
                "values", closed(values, List.of()),
                "all", closed(all, List.of()),
                "where", object("description", "a condition in ECQL on the file's columns", "type", "string"));
        if (Attribute.of(role).contains(Attribute.ELEVATION)) {
            properties.put("unit", words(SchemaTerms.units(Dimension.ELEVATION)));
        }
        return closed(properties, required);
    }

    /** A file, what there is to say of it, or several such. */
    private static Map<String, Object> files(Role role) {
        Map<String, Object> said = object("$ref", "#/$defs/" + definition(role));
        Map<String, Object> one = anyOf(List.of(object("type", "string"), said));
        Map<String, Object> layer =
                anyOf(List.of(object("type", "string"), said, object("type", "array", "items", one)));
        layer.put("description", role.meaning());
        return layer;
    }

    static String definition(Role role) {
        return role.word() + "_layer";
    }

    private static Map<String, Object> waiver() {
        return closed(
                object(
                        "rule", text("the id of the rule that is waived"),
                        "feature", text("the feature it holds for; every feature when it is left out"),
                        "by", text("who granted it"),
                        "date", day("when"),
                        "reason", text("why"),
                        "until", day("the last day it holds")),
                List.of("rule", "by", "date", "reason"));
    }
}
