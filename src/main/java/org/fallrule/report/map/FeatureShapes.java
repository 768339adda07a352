package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** The features of a plan as shapes, each role a layer. Spots, soils and the like are left out: they would bury the plan. */
final class FeatureShapes {
    private static final List<Role> DRAWN = List.of(
            Role.STREET,
            Role.WATER_BODY,
            Role.DRIVE,
            Role.WALK,
            Role.CONTOUR,
            Role.BUILDING,
            Role.SEPTIC,
            Role.FLOOD_ZONE,
            Role.EASEMENT,
            Role.LOT,
            Role.UTILITY,
            Role.PIPE,
            Role.TREE,
            Role.WELL,
            Role.CLEANOUT,
            Role.INLET,
            Role.OUTFALL);

    private static final Comparator<Geometry> BY_SIZE = Comparator.comparingInt(Geometry::getDimension)
            .thenComparingDouble(Geometry::getArea)
            .thenComparingDouble(Geometry::getLength);

    private static final int LABEL_LENGTH = 18;
    private static final Pattern NUMBER = Pattern.compile("[0-9.,-]+");

    private final SiteAnalysis analysis;
    private final Set<Feature> kept;
    private final Clip drawn;
    private final Clip labelled;

    /**
     * @param view what the map shows
     * @param kept the features whose labels must stay
     */
    FeatureShapes(SiteAnalysis analysis, Envelope view, Set<Feature> kept) {
        this.analysis = analysis;
        this.kept = kept;
        this.labelled = new Clip(view);
        this.drawn = labelled.wider(0.1);
    }

    /** The ground that buildings stand on. */
    static Geometry buildingsIn(Site site) {
        List<Geometry> footprints = site.features(Role.BUILDING).stream()
                .map(Feature::geometry)
                .filter(Geometry::isValid)
                .toList();
        return UnaryUnionOp.union(footprints, new GeometryFactory());
    }

    /** Where a layer of a role belongs among the layers of a map, from the ground up. */
    static int placeOf(Role role, List<DrawingLayer> layers) {
        List<String> under =
                DRAWN.subList(0, DRAWN.indexOf(role)).stream().map(Role::word).toList();
        return (int)
                layers.stream().filter(layer -> under.contains(layer.name())).count();
    }

    List<DrawingLayer> layers() {
        return DRAWN.stream()
                .map(role -> new DrawingLayer(role.word(), shapes(role)))
                .filter(layer -> !layer.shapes().isEmpty())
                .toList();
    }

    private List<Shape> shapes(Role role) {
        List<Shape> shapes = new ArrayList<>();
        features(role).forEach(feature -> add(feature, geometry(feature), shapes));
        return shapes;
    }

    private Stream<Feature> features(Role role) {
        return analysis.site().features(role).stream()
                .sorted(Comparator.comparing(
                        feature -> feature.get(Attribute.OWN).orElse(false)));
    }

    private Geometry geometry(Feature feature) {
        return analysis.network().runOf(feature).<Geometry>map(PipeRun::axis).orElseGet(feature::geometry);
    }

    private void add(Feature feature, Geometry geometry, List<Shape> shapes) {
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            addPart(feature, geometry.getGeometryN(i), shapes);
        }
        if (!isNamed(feature)) {
            return;
        }
        Geometry visible = labelled.of(mainPart(geometry));
        Geometry bare = feature.role() == Role.LOT ? withoutBuildings(visible) : visible;
        if (!bare.isEmpty()) {
            shapes.add(new Shape.Label(rank(feature.role()), name(feature), bare, kept.contains(feature)));
        }
    }

    /** The part of a lot on which no building stands. */
    private Geometry withoutBuildings(Geometry lot) {
        Geometry bare = lot;
        for (Feature building : analysis.site().features(Role.BUILDING)) {
            Geometry footprint = building.geometry();
            if (footprint.isValid() && footprint.getEnvelopeInternal().intersects(bare.getEnvelopeInternal())) {
                bare = OverlayNGRobust.overlay(bare, footprint, OverlayNG.DIFFERENCE);
            }
        }
        return bare;
    }

    /** The part that bears the name: the largest area, else the longest line, else the first point. */
    private static Geometry mainPart(Geometry geometry) {
        Geometry main = geometry.getGeometryN(0);
        for (int i = 1; i < geometry.getNumGeometries(); i++) {
            main = BY_SIZE.compare(geometry.getGeometryN(i), main) > 0 ? geometry.getGeometryN(i) : main;
        }
        return main;
    }

    private void addPart(Feature feature, Geometry part, List<Shape> shapes) {
        Geometry visible = drawn.of(part);
        String title = FeatureName.of(feature);
        Optional<String> name = Optional.of(title);
        if (visible.isEmpty()) {
            return;
        }
        switch (part.getDimension()) {
            case 2 -> shapes.add(new Shape.Area(Look.of(feature), visible, title, name));
            case 1 -> shapes.add(new Shape.Line(Look.of(feature), visible, title, name));
            default -> {
                for (Coordinate place : visible.getCoordinates()) {
                    shapes.add(new Shape.Sign(Look.of(feature), place, title, name));
                }
            }
        }
    }

    private boolean isNamed(Feature feature) {
        return switch (feature.role()) {
            case CONTOUR -> false;
            case UTILITY -> kept.contains(feature);
            case LOT -> labelled.crosses(feature.geometry().getBoundary());
            default -> true;
        };
    }

    /** A lot whose id is a number would be taken for a height beside the contours. */
    private static String name(Feature feature) {
        String id = PlainText.clipped(feature.id(), LABEL_LENGTH);
        return feature.role() == Role.LOT && NUMBER.matcher(id).matches() ? "lot " + id : id;
    }

    private static Shape.Rank rank(Role role) {
        return switch (role) {
            case OUTFALL -> Shape.Rank.OUTFALL;
            case INLET -> Shape.Rank.INLET;
            case PIPE -> Shape.Rank.PIPE;
            case UTILITY, CLEANOUT, WELL, SEPTIC -> Shape.Rank.UTILITY;
            case BUILDING -> Shape.Rank.BUILDING;
            case LOT -> Shape.Rank.LOT;
            default -> Shape.Rank.SURFACE;
        };
    }
}
