package org.fallrule.reference;

import static org.fallrule.reference.SchemaTerms.anyOf;
import static org.fallrule.reference.SchemaTerms.closed;
import static org.fallrule.reference.SchemaTerms.day;
import static org.fallrule.reference.SchemaTerms.object;
import static org.fallrule.reference.SchemaTerms.quantity;
import static org.fallrule.reference.SchemaTerms.text;
import static org.fallrule.reference.SchemaTerms.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.check.Check;
import org.fallrule.check.Parameter;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;
import org.fallrule.rulebook.AsBuiltTolerances;
import org.fallrule.rulebook.BookKeys;
import org.fallrule.rulebook.Checks;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** The JSON Schema (draft 2020-12) of rule books, made from the checks and what they may be told. */
public final class BookSchema {
    private final Checks checks = Checks.all();

    private BookSchema() {}

    public static String write() {
        return JsonWriter.write(new BookSchema().book());
    }

    private Map<String, Object> book() {
        Map<String, Object> properties = object(
                "title", text("the book's title"),
                "builds_on", text("the book under this one, as a path from here"),
                "effective", effective(),
                "loosen_because", text("why a firm's book changes what the county says of the place"));
        properties.put("as_built", asBuilt());
        BookKeys.ofPlace().forEach(key -> properties.put(key, object("type", "object")));
        properties.put(
                "rules",
                object(
                        "type",
                        "object",
                        "description",
                        "rules by id",
                        "additionalProperties",
                        object("$ref", "#/$defs/rule")));
        properties.put("checklist", object("type", "object", "description", "what a submittal is looked over for"));
        Map<String, Object> schema = object(
                "$schema", SchemaTerms.DIALECT,
                "title", "A rule book of Fallrule",
                "description", "Written by the build from the checks; not to be edited.");
        schema.putAll(closed(properties, List.of("title")));
        Map<String, Object> definitions = object("rule", rule(), "basis", basis());
        definitions.putAll(SchemaTerms.quantities());
        schema.put("$defs", definitions);
        return schema;
    }

    /** How far the work as built may lie from its design. */
    private static Map<String, Object> asBuilt() {
        Map<String, Object> properties = object("weight", words(List.of("must", "should")));
        for (AsBuiltTolerances.Measure measure : AsBuiltTolerances.Measure.values()) {
            properties.put(measure.word(), quantity(measure.dimension()));
        }
        properties.put("basis", object("$ref", "#/$defs/basis"));
        Map<String, Object> tolerances =
                object("description", "how far the work as built may lie from its design, either way");
        tolerances.putAll(closed(properties, List.of("basis")));
        return tolerances;
    }

    /** A rule names its check and then holds that check's keys; or it changes single keys of a rule below; or it drops it. */
    private Map<String, Object> rule() {
        Map<String, Object> rule = object("type", "object", "propertyNames", words(allKeys()));
        rule.put("if", object("required", List.of("check")));
        rule.put(
                "then",
                object("oneOf", checks.checks().stream().map(this::whole).toList()));
        rule.put("else", object("properties", changes()));
        return rule;
    }

    private List<String> allKeys() {
        List<String> keys = new ArrayList<>(about().keySet());
        keys.add("check");
        changes().keySet().stream().filter(key -> !keys.contains(key)).forEach(keys::add);
        return keys;
    }

    /** A rule that stands by itself. */
    private Map<String, Object> whole(Check check) {
        Map<String, Object> properties = object("check", object("const", check.name()));
        properties.putAll(about());
        List<String> required = new ArrayList<>(List.of("check", "title", "weight", "basis"));
        for (Parameter<?> parameter : check.parameters()) {
            properties.putAll(keys(parameter));
            if (parameter.required()) {
                required.add(parameter.name());
            }
        }
        return closed(properties, required);
    }

    /** What may stand under each key of a rule that changes another: what any check takes there. */
    private Map<String, Object> changes() {
        Map<String, List<Object>> forms = new LinkedHashMap<>();
        about().forEach((key, form) -> forms.put(key, List.of(form)));
        for (Check check : checks.checks()) {
            for (Parameter<?> parameter : check.parameters()) {
                keys(parameter).forEach((key, form) -> {
                    List<Object> more = new ArrayList<>(forms.getOrDefault(key, List.of()));
                    if (!more.contains(form)) {
                        more.add(form);
                    }
                    forms.put(key, more);
                });
            }
        }
        Map<String, Object> changes = new LinkedHashMap<>();
        forms.forEach((key, all) -> changes.put(key, all.size() == 1 ? all.get(0) : anyOf(all)));
        return changes;
    }

    private static Map<String, Object> about() {
        return object(
                "title", text("what the rule asks, in a few words"),
                "weight", words(Arrays.stream(Weight.values()).map(Weight::word).toList()),
                "basis", object("$ref", "#/$defs/basis"),
                "effective", effective(),
                "loosen_because", text("why a firm's book may loosen the rule"),
                "drop", object("const", true),
                "reason", text("why the rule is dropped"));
    }

    private static Map<String, Object> effective() {
        Map<String, Object> span =
                closed(object("from", day("the first day"), "until", day("the last day")), List.of());
        return anyOf(List.of(day("the first day on which this is in force"), span));
    }

    private static Map<String, Object> basis() {
        return closed(
                object(
                        "kind",
                                words(Arrays.stream(Basis.Kind.values())
                                        .map(Basis.Kind::word)
                                        .toList()),
                        "document", text("its title and edition"),
                        "section", text("the section, table or equation"),
                        "known", text("read, read in pages about it, or from memory"),
                        "note", text("what else to know")),
                List.of("kind"));
    }

    private static Map<String, Object> keys(Parameter<?> parameter) {
        Map<String, Object> value = value(parameter.form());
        value.putIfAbsent("description", parameter.meaning());
        Map<String, Object> keys = object(parameter.name(), value);
        parameter
                .conditionKey()
                .ifPresent(key -> keys.put(key, object("description", "a condition in ECQL", "type", "string")));
        return keys;
    }

    private static Map<String, Object> value(Parameter.Form form) {
        if (form instanceof Parameter.Form.Features features) {
            return words(features.roles().stream().map(Role::word).toList());
        }
        if (form instanceof Parameter.Form.LimitOf limit) {
            Map<String, Object> one = quantity(limit.dimension(), limit.range());
            Map<String, Object> each = closed(
                    object(
                            "when", object("description", "a condition in ECQL", "type", "string"),
                            "is", anyOf(List.of(object("const", "none"), one))),
                    List.of("is"));
            return anyOf(List.of(one, object("type", "array", "minItems", 1, "items", each)));
        }
        if (form instanceof Parameter.Form.QuantityOf quantity) {
            return quantity(quantity.dimension(), quantity.range());
        }
        if (form instanceof Parameter.Form.OneOf oneOf) {
            return words(oneOf.words());
        }
        if (form instanceof Parameter.Form.AttributesOf) {
            Map<String, Object> name =
                    words(Attribute.all().stream().map(Attribute::name).toList());
            return anyOf(List.of(name, object("type", "array", "items", name)));
        }
        return object("type", "string");
    }
}
