package org.fallrule.reference;

import static org.fallrule.reference.SchemaTerms.anyOf;
import static org.fallrule.reference.SchemaTerms.closed;
import static org.fallrule.reference.SchemaTerms.object;
import static org.fallrule.reference.SchemaTerms.text;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.site.Role;

/** The JSON Schema (draft 2020-12) of a profile of layers, which a site.yaml names under {@code layers_from}. */
public final class ProfileSchema {
    private ProfileSchema() {}

    public static String write() {
        Map<String, Object> layers = new LinkedHashMap<>();
        Map<String, Object> definitions = object("units", SiteSchema.units());
        for (Role role : Role.values()) {
            layers.put(role.word(), entries(role));
            definitions.put(SiteSchema.definition(role), entry(role));
        }
        Map<String, Object> properties = object(
                "title", text("what the profile is of"),
                "units", object("$ref", "#/$defs/units"),
                "layers", closed(layers, List.of()));
        Map<String, Object> schema = object(
                "$schema", SchemaTerms.DIALECT,
                "title", "What a firm says once of the layers of all its sites",
                "description", "Written by the build from the roles and attributes; not to be edited.");
        schema.putAll(closed(properties, List.of()));
        schema.put("$defs", definitions);
        return JsonWriter.write(schema);
    }

    /** What it says of a role, or a list of it by the names of files; never a file alone. */
    private static Map<String, Object> entries(Role role) {
        Map<String, Object> one = object("$ref", "#/$defs/" + SiteSchema.definition(role));
        Map<String, Object> entries = anyOf(List.of(one, object("type", "array", "items", one)));
        entries.put("description", role.meaning());
        return entries;
    }

    private static Map<String, Object> entry(Role role) {
        Map<String, Object> file =
                text("the files it speaks of, * for any letters and ? for one; every file when it is left out");
        return SiteSchema.layer(role, file, List.of());
    }
}
