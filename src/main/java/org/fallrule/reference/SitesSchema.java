package org.fallrule.reference;

import static org.fallrule.reference.SchemaTerms.anyOf;
import static org.fallrule.reference.SchemaTerms.closed;
import static org.fallrule.reference.SchemaTerms.object;
import static org.fallrule.reference.SchemaTerms.quantity;
import static org.fallrule.reference.SchemaTerms.text;

import java.util.List;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.measure.Dimension;

/** The JSON Schema (draft 2020-12) of sites.yaml, which stands beside site folders and names the layers that they share. */
public final class SitesSchema {
    private SitesSchema() {}

    public static String write() {
        Map<String, Object> roles = SiteSchema.roles();
        Map<String, Object> properties = object(
                "near", quantity(Dimension.LENGTH),
                "county", text("the county of sites that name none"),
                "house", text("the firm of sites that name none"),
                "crs", text("the coordinate reference system of shared layers that do not say themselves"),
                "datum", text("the vertical datum of shared layers that do not say themselves"),
                "units", object("$ref", "#/$defs/units"),
                "absent", anyOf(List.of(roles, object("type", "array", "items", roles))),
                "shared", SiteSchema.layers());
        Map<String, Object> schema = object(
                "$schema", SchemaTerms.DIALECT,
                "title", "What the sites in one folder share",
                "description", "Written by the build from the roles and attributes; not to be edited.");
        schema.putAll(closed(properties, List.of()));
        schema.put("$defs", SiteSchema.definitions());
        return JsonWriter.write(schema);
    }
}
