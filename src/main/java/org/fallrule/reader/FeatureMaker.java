package org.fallrule.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Unit;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Geometry;

/** Makes the features of one layer: the ones that belong to it, in the local frame, with their attributes. */
final class FeatureMaker {
    /** What the plan says of the ends of a pipe. */
    private static final List<Attribute<?>> OF_ENDS =
            List.of(Attribute.INVERT_UP, Attribute.INVERT_DOWN, Attribute.DEPTH_UP, Attribute.DEPTH_DOWN);

    private final LayerSpec spec;
    private final RawLayer layer;
    private final BiFunction<Geometry, Place, Geometry> toLocal;
    private final List<Fault> faults;
    private final List<Fault> problems;
    private final ValueReader values;
    private final Heights heights;
    private final OutsideSystem outside = new OutsideSystem();
    private final GeometryForm forms;
    private final Set<String> columns;
    private final Map<Attribute<?>, ColumnFinder.Column> columnOf = new LinkedHashMap<>();

    FeatureMaker(
            LayerSpec spec,
            RawLayer layer,
            BiFunction<Geometry, Place, Geometry> toLocal,
            Map<String, Unit> siteUnits,
            List<Fault> faults,
            List<Fault> problems) {
        this.spec = spec;
        this.layer = layer;
        this.toLocal = toLocal;
        this.columns = layer.columns();
        this.faults = faults;
        this.problems = problems;
        this.values = new ValueReader(spec, siteUnits, faults, problems);
        this.heights = new Heights(spec.role(), values.unitOf(Attribute.ELEVATION), Place.of(spec.source()), problems);
        this.forms = new GeometryForm(faults);
    }

    List<Feature> features() {
        if (layer.features().isEmpty() && columns.isEmpty()) {
            return List.of();
        }
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
        outside.tell(faults);
        return features;
    }

    private void refuseUnknownNames() {
        for (String name : spec.where().names()) {
            if (!columns.contains(name)) {
                faults.add(new Fault(
                        spec.place(),
                        "the condition " + spec.whereText() + " names the column " + name + ", which " + spec.source()
                                + " does not have; it has " + ColumnFinder.listed(columns)));
            }
        }
    }

    private boolean belongs(RawFeature raw) {
        Truth truth = spec.holds(raw);
        if (truth == Truth.UNKNOWN) {
            problems.add(new Fault(
                    place(raw),
                    "has nothing in a column that the condition " + spec.whereText() + " asks for; it is kept"));
        }
        return truth != Truth.FALSE;
    }

    private Place place(RawFeature raw) {
        return Place.of(spec.source()).feature(raw.label());
    }

    private List<Feature> features(RawFeature raw) {
        Place place = place(raw);
        if (raw.geometry().isEmpty() || raw.geometry().get().isEmpty()) {
            problems.add(new Fault(place, "has no geometry and is left out"));
            return List.of();
        }
        Attributes attributes = attributes(raw, place);
        String id = attributes.get(Attribute.ID).orElseGet(() -> raw.label().replace("feature ", "#"));
        List<Geometry> pieces = pieces(raw.geometry().get(), attributes, place);
        Attributes ofPiece = pieces.size() > 1 ? ofOnePiece(attributes, place) : attributes;
        List<Feature> features = new ArrayList<>();
        for (Geometry piece : pieces) {
            String pieceId = pieces.size() == 1 ? id : id + "." + (features.size() + 1);
            Geometry raised = heights.applied(piece, ofPiece, place);
            features.add(new Feature(spec.role(), pieceId, raised, ofPiece.with(Attribute.ID, pieceId), place));
        }
        return features;
    }

    /** What holds for each piece of a feature: the inverts of a whole pipe are not those of its pieces. */
    private Attributes ofOnePiece(Attributes attributes, Place place) {
        if (OF_ENDS.stream().noneMatch(attributes::has)) {
            return attributes;
        }
        problems.add(new Fault(
                place,
                "is drawn in pieces that do not join, so its inverts are not used; close the gaps, or draw each piece as"
                        + " a pipe with its own inverts"));
        return attributes.without(OF_ENDS::contains);
    }

    private List<Geometry> pieces(Geometry drawn, Attributes attributes, Place place) {
        Geometry local;
        try {
            local = toLocal.apply(drawn, place);
        } catch (UnusableInput e) {
            outside.add(e);
            return List.of();
        }
        try {
            return Centreline.isOne(spec.role(), drawn)
                    ? List.of(Centreline.area(spec.role(), local, attributes, place))
                    : forms.pieces(spec.role(), drawn, local, place);
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return List.of();
        }
    }

    private Attributes attributes(RawFeature raw, Place place) {
        Map<Attribute<?>, Object> said = new LinkedHashMap<>();
        columnOf.forEach((attribute, column) -> {
            Object cell = raw.columns().get(column.name());
            if (cell != null) {
                values.value(attribute, column, cell, place).ifPresent(value -> said.put(attribute, value));
            }
        });
        spec.all().forEach((attribute, text) -> {
            if (!said.containsKey(attribute)) {
                ofEvery(attribute, text).ifPresent(value -> said.put(attribute, value));
            }
        });
        return Attributes.of(said);
    }

    /** What site.yaml says of every feature of the layer. */
    private Optional<Object> ofEvery(Attribute<?> attribute, Node.Scalar said) {
        ColumnFinder.Column column = new ColumnFinder.Column(attribute.name(), Optional.empty());
        return values.value(attribute, column, said.text(), said.place());
    }
}
