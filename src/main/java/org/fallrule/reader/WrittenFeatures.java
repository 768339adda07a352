package org.fallrule.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryEditor;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Reads the features of a {@link WrittenPlan}: {@code {role: outfall, id: OF-1, kind: daylight, at: POINT (50 6)}}. */
final class WrittenFeatures {
    /** A number that no plan of a lot holds; it would make a geometry that nothing can be measured in. */
    private static final double FARTHEST = 1e6;

    private final Unit unit;
    private final List<Fault> faults;

    WrittenFeatures(Unit unit, List<Fault> faults) {
        this.unit = unit;
        this.faults = faults;
    }

    List<Feature> of(List<Node> nodes) {
        List<Feature> features = new ArrayList<>();
        for (Node node : nodes) {
            if (node instanceof Node.Mapping mapping) {
                features.addAll(feature(mapping));
            } else {
                faults.add(new Fault(node.place(), "found " + node.kind() + ", wanted {role: …, id: …, at: …}"));
            }
        }
        return features;
    }

    private List<Feature> feature(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<Role> role = keys.required("role", "what it stands for").flatMap(word -> RoleWord.read(word, faults));
        Optional<Node.Scalar> id = keys.required("id", "the feature's name in the plan");
        Optional<Geometry> geometry =
                keys.required("at", "its geometry in well-known text").flatMap(this::geometry);
        if (role.isEmpty() || id.isEmpty() || geometry.isEmpty()) {
            return List.of();
        }
        Map<String, Object> columns = columns(role.get(), mapping);
        return made(role.get(), new RawFeature(id.get().text(), geometry, columns), mapping);
    }

    private Map<String, Object> columns(Role role, Node.Mapping mapping) {
        Map<String, Object> columns = new LinkedHashMap<>();
        List<String> known = Attribute.of(role).stream().map(Attribute::name).toList();
        mapping.entries().forEach((key, node) -> {
            if (key.equals("role") || key.equals("at")) {
                return;
            }
            if (!known.contains(key)) {
                fault(
                        mapping.placeOf(key),
                        role.spoken() + ": there is no attribute " + Excerpt.of(key) + Nearest.hint(key, known)
                                + " Known: " + String.join(", ", known));
            } else if (node instanceof Node.Scalar scalar) {
                readable(Attribute.named(key).orElseThrow(), scalar).ifPresent(text -> columns.put(key, text));
            } else {
                fault(node.place(), key + ": found " + node.kind() + ", wanted a single value");
            }
        });
        return columns;
    }

    /** The text, if it can be read with the unit that it carries. */
    private Optional<String> readable(Attribute<?> attribute, Node.Scalar scalar) {
        if (attribute.dimension().isPresent() && !scalar.blank()) {
            try {
                Written.parse(scalar.text(), attribute.dimension().get());
            } catch (UnreadableQuantity e) {
                fault(scalar.place(), attribute.name() + ": " + e.says());
                return Optional.empty();
            }
        }
        return Optional.of(scalar.text());
    }

    /** Makes the feature as from a layer that holds it alone, and points at its line with every fault. */
    private List<Feature> made(Role role, RawFeature raw, Node.Mapping mapping) {
        Place place = mapping.place();
        List<Fault> found = new ArrayList<>();
        RawLayer layer = new RawLayer(place.fileAndLine(), Optional.empty(), List.of(raw), List.of());
        LayerSpec spec = LayerSpec.plain(role, place.fileAndLine(), place);
        List<Feature> features = new FeatureMaker(
                        spec,
                        layer,
                        (geometry, where) -> inMetres(geometry),
                        Map.of(Attribute.ELEVATION.name(), unit),
                        found,
                        found)
                .features();
        found.forEach(each -> fault(pointed(each, mapping), each.says()));
        return features;
    }

    private static Place pointed(Fault fault, Node.Mapping mapping) {
        String column = fault.where().field();
        return mapping.get(column)
                .map(Node::place)
                .orElse(mapping.place())
                .feature(fault.where().feature())
                .field(column);
    }

    private Optional<Geometry> geometry(Node.Scalar text) {
        try {
            Geometry geometry = new WKTReader().read(text.text());
            for (Coordinate place : geometry.getCoordinates()) {
                if (!(Math.abs(place.x) < FARTHEST && Math.abs(place.y) < FARTHEST)) {
                    fault(text.place(), "at: " + text.kind() + " lies too far away for a lot");
                    return Optional.empty();
                }
            }
            return Optional.of(geometry);
        } catch (ParseException | IllegalArgumentException e) {
            fault(
                    text.place(),
                    "at: " + text.kind() + " is not well-known text (" + Excerpt.of(String.valueOf(e.getMessage()))
                            + "); write it like POINT (50 6) or LINESTRING (0 0, 40 0)");
            return Optional.empty();
        }
    }

    private Geometry inMetres(Geometry geometry) {
        double metres = unit.toSi();
        return new GeometryEditor().edit(geometry, new GeometryEditor.CoordinateOperation() {
            @Override
            public Coordinate[] edit(Coordinate[] places, Geometry part) {
                Coordinate[] scaled = new Coordinate[places.length];
                for (int i = 0; i < places.length; i++) {
                    scaled[i] = new Coordinate(places[i].x * metres, places[i].y * metres, places[i].getZ());
                }
                return scaled;
            }
        });
    }

    private void fault(Place where, String says) {
        faults.add(new Fault(where, says));
    }
}
