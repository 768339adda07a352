package org.fallrule.reader.geojson;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.reader.layer.RawFeature;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** The members of one feature object, gathered until all are there. */
final class FeatureMembers {
    private final Place where;
    private Optional<Geometry> geometry = Optional.empty();
    private boolean geometryGiven;
    private Map<String, Object> columns = new LinkedHashMap<>();
    private final Set<String> names = new HashSet<>();
    private @Nullable Object id;

    FeatureMembers(Place where) {
        this.where = where;
    }

    void geometry(Optional<Geometry> given) {
        geometry = given;
        geometryGiven = true;
    }

    void columns(Map<String, Object> given) {
        columns = given;
    }

    /** Takes the properties' names. */
    Set<String> names() {
        return names;
    }

    void id(Object given) {
        id = given;
    }

    /** Whether any member was there that only a feature has. */
    boolean any() {
        return geometryGiven || !names.isEmpty() || id != null;
    }

    /** The feature; its {@code id} becomes a column of that name unless a property has the name. */
    RawFeature feature(String label, LayerNotes notes) {
        if (!geometryGiven) {
            notes.count(LayerNotes.Kind.NO_GEOMETRY_MEMBER, where.feature(label));
        }
        Map<String, Object> all = new LinkedHashMap<>();
        if (id != null && !names.contains("id")) {
            all.put("id", id);
        }
        all.putAll(columns);
        return new RawFeature(label, geometry, all);
    }
}
