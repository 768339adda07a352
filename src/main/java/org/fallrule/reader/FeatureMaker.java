package org.fallrule.reader;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.ToLocal;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;

/** Makes the features of one layer: the ones that belong to it, in the local frame, with their attributes. */
final class FeatureMaker {
    private final LayerSpec spec;
    private final RawLayer layer;
    private final ToLocal toLocal;
    private final List<Fault> faults;
    private final List<Fault> problems;
    private final ValueReader values;
    private final Heights heights;
    private final GeometryForm forms;
    private final Set<String> columns = new LinkedHashSet<>();
    private final Map<Attribute<?>, ColumnFinder.Column> columnOf = new java.util.LinkedHashMap<>();

    FeatureMaker(
            LayerSpec spec,
            RawLayer layer,
            ToLocal toLocal,
            Map<String, Unit> siteUnits,
            List<Fault> faults,
            List<Fault> problems) {
        this.spec = spec;
        this.layer = layer;
        this.toLocal = toLocal;
        this.faults = faults;
        this.problems = problems;
        this.values = new ValueReader(spec, siteUnits, faults, problems);
        this.heights = new Heights(spec.role(), values.unitOf(Attribute.ELEVATION), Place.of(spec.file()), problems);
        this.forms = new GeometryForm(faults);
    }

    List<Feature> features() {
        layer.features().forEach(feature -> columns.addAll(feature.columns().keySet()));
        ColumnFinder finder = new ColumnFinder(spec, columns, faults);
        for (Attribute<?> attribute : Attribute.of(spec.role())) {
            finder.of(attribute).ifPresent(column -> columnOf.put(attribute, column));
        }
        refuseUnknownNames();
        List<Feature> features = new ArrayList<>();
        for (RawFeature raw : layer.features()) {
            if (belongs(raw)) {
                features.addAll(features(raw));
            }
        }
        return features;
    }

    private void refuseUnknownNames() {
        for (String name : spec.where().names()) {
            if (!columns.isEmpty() && !columns.contains(name)) {
                faults.add(new Fault(
                        spec.place(),
                        "the condition " + spec.whereText() + " names the column " + name + ", which " + spec.file()
                                + " does not have; it has " + String.join(", ", columns)));
            }
        }
    }

    private boolean belongs(RawFeature raw) {
        Truth truth =
                spec.where().test(name -> Optional.ofNullable(raw.columns().get(name)));
        if (truth == Truth.UNKNOWN) {
            problems.add(new Fault(
                    place(raw),
                    "has nothing in a column that the condition " + spec.whereText() + " asks for; it is kept"));
        }
        return truth != Truth.FALSE;
    }

    private Place place(RawFeature raw) {
        return Place.of(spec.file()).feature(raw.label());
    }

    private List<Feature> features(RawFeature raw) {
        Place place = place(raw);
        if (raw.geometry().isEmpty() || raw.geometry().get().isEmpty()) {
            problems.add(new Fault(place, "has no geometry and is left out"));
            return List.of();
        }
        Attributes attributes = attributes(raw, place);
        String id = attributes.get(Attribute.ID).orElse(raw.label().replace("feature ", "#"));
        List<Geometry> pieces = pieces(raw.geometry().get(), place);
        List<Feature> features = new ArrayList<>();
        for (Geometry piece : pieces) {
            String pieceId = pieces.size() == 1 ? id : id + "." + (features.size() + 1);
            Geometry raised = heights.applied(piece, attributes);
            features.add(new Feature(spec.role(), pieceId, raised, attributes.with(Attribute.ID, pieceId), place));
        }
        return features;
    }

    private List<Geometry> pieces(Geometry drawn, Place place) {
        try {
            return forms.pieces(spec.role(), drawn, toLocal.local(drawn, place), place);
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return List.of();
        }
    }

    private Attributes attributes(RawFeature raw, Place place) {
        Attributes attributes = Attributes.none();
        for (Map.Entry<Attribute<?>, ColumnFinder.Column> entry : columnOf.entrySet()) {
            Object cell = raw.columns().get(entry.getValue().name());
            if (cell != null) {
                Optional<Object> value = values.value(entry.getKey(), entry.getValue(), cell, place);
                if (value.isPresent()) {
                    attributes = attributes.withUntyped(entry.getKey(), value.get());
                }
            }
        }
        return attributes;
    }

    /** Elevations that the geometry carries. */
    private static final class Heights {
        private final Role role;
        private final Optional<Unit> unit;
        private final Place file;
        private final List<Fault> problems;
        private boolean told;

        Heights(Role role, Optional<Unit> unit, Place file, List<Fault> problems) {
            this.role = role;
            this.unit = unit;
            this.file = file;
            this.problems = problems;
        }

        /** The geometry with Z in metres: from the elevation attribute, else from Z in the stated unit, else none. */
        Geometry applied(Geometry geometry, Attributes attributes) {
            Optional<Elevation> stated = attributes.get(Attribute.ELEVATION);
            Geometry copy = geometry.copy();
            copy.apply((org.locationtech.jts.geom.CoordinateFilter) place -> {
                double z = place.getZ();
                if (stated.isPresent()) {
                    place.setZ(stated.get().metres());
                } else if (Double.isFinite(z)) {
                    place.setZ(unit.map(known -> z * known.toSi()).orElse(Double.NaN));
                    tellOnce();
                }
            });
            return copy;
        }

        private void tellOnce() {
            boolean wanted = role == Role.SPOT || role == Role.PIPE || role == Role.CONTOUR || role == Role.BREAKLINE;
            if (unit.isEmpty() && wanted && !told) {
                told = true;
                problems.add(new Fault(
                        file, "its Z has no unit and is not used; say units: {elevation: …} with m, ft or ft_us"));
            }
        }
    }
}
