package org.fallrule.reader.geojson;

import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;

/** Reads feature objects (RFC 7946, section 3.2), their members in any order. */
final class FeatureReader {
    static final String TYPE = "Feature";

    private final JsonStream json;
    private final LayerNotes notes;
    private final GeometryReader geometries;
    private final PropertiesReader properties;

    FeatureReader(JsonStream json, LayerNotes notes, GeometryReader geometries) {
        this.json = json;
        this.notes = notes;
        this.geometries = geometries;
        this.properties = new PropertiesReader(json, notes);
    }

    /** The names of all properties read so far. */
    Set<String> columns() {
        return properties.columns();
    }

    /** The feature at the cursor, a member of a collection. Faults in it carry its label. */
    RawFeature read(String label) {
        try {
            return feature(label);
        } catch (UnusableInput e) {
            throw new UnusableInput(e.faults().stream()
                    .map(fault -> new Fault(fault.where().feature(label), fault.says()))
                    .toList());
        }
    }

    private RawFeature feature(String label) {
        if (json.token() != Token.OBJECT_START) {
            throw json.fault("found " + json.found() + "; wanted a Feature object");
        }
        FeatureMembers members = new FeatureMembers(json.here());
        while (json.next() == Token.NAME) {
            Place where = json.here();
            String name = MemberName.once(json);
            json.next();
            if (name.equals("type")) {
                onlyFeature();
            } else if (!take(name, members)) {
                pass(name, where);
            }
        }
        return members.feature(label, notes);
    }

    private void onlyFeature() {
        String type = MemberName.text(json, "type");
        if (!type.equals(TYPE)) {
            throw json.fault("\"" + type + "\" stands where a Feature is wanted");
        }
    }

    /** Reads the value at the cursor when the name is one of a feature's; otherwise false, and nothing is read. */
    boolean take(String name, FeatureMembers members) {
        switch (name) {
            case "geometry" -> members.geometry(geometries.readOrNull());
            case "properties" -> members.columns(properties.read(members.names()));
            case "id" -> members.id(id());
            case "bbox" -> json.skip();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void pass(String name, Place where) {
        if (name.equals("crs")) {
            throw json.fault(
                    "a \"crs\" member stands within a feature; it belongs at the top of the file, once for all");
        }
        notes.count(LayerNotes.Kind.MEMBER_IGNORED, where.field(name));
        json.skip();
    }

    private Object id() {
        return switch (json.token()) {
            case TEXT -> json.text();
            case NUMBER -> json.longOrDouble();
            default -> throw json.fault("the feature's \"id\" is " + json.found() + "; wanted a text or a number");
        };
    }
}
