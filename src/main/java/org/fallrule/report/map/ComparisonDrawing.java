package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.DataChange;
import org.fallrule.comparison.FeaturePair;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Both states of a site on one map: the later as plans are drawn, and of the earlier, dashed, what has moved or gone. */
public final class ComparisonDrawing {
    private static final double MARGIN = 0.15;
    private static final double LEAST = 12;
    private static final GeometryFactory LINES = new GeometryFactory();

    private final Comparison comparison;
    private final SiteAnalysis drawn;

    private ComparisonDrawing(Comparison comparison) {
        this.comparison = comparison;
        this.drawn = (comparison.after().isPlan() ? comparison.after() : comparison.before()).analysis();
    }

    /**
     * Draws both states; nothing when nothing lies anywhere.
     *
     * @param badges the numbers of the findings that a person has to look at
     * @param flattest least height of the map over its width
     * @param tallest greatest height of the map over its width
     */
    public static Optional<Drawing> of(
            Comparison comparison, List<Shape.Badge> badges, double flattest, double tallest) {
        ComparisonDrawing drawing = new ComparisonDrawing(comparison);
        Envelope extent = drawing.extent();
        return extent.isNull()
                ? Optional.empty()
                : Optional.of(
                        drawing.in(Extent.shaped(Extent.roomy(extent, MARGIN, LEAST), flattest, tallest), badges));
    }

    /** A place on a finding's geometry for its badge. */
    public static Coordinate middle(Geometry geometry) {
        return PlanDrawing.middle(geometry);
    }

    private Envelope extent() {
        Envelope extent = new Envelope();
        Stream.of(comparison.before(), comparison.after())
                .map(each -> each.site())
                .forEach(site -> {
                    site.ownLot()
                            .ifPresent(
                                    lot -> extent.expandToInclude(lot.geometry().getEnvelopeInternal()));
                    Stream.of(Role.values())
                            .filter(role -> role.isOfDrain() || role == Role.AS_BUILT)
                            .flatMap(role -> site.features(role).stream())
                            .forEach(feature ->
                                    extent.expandToInclude(feature.geometry().getEnvelopeInternal()));
                });
        return extent;
    }

    private Drawing in(Envelope view, List<Shape.Badge> badges) {
        List<DrawingLayer> layers = new ArrayList<>(new FeatureShapes(drawn, view, Set.of()).layers());
        layers.add(FeatureShapes.placeOf(Role.PIPE, layers), new DrawingLayer("before", before()));
        layers.add(new DrawingLayer(Role.AS_BUILT.word(), points()));
        layers.add(new DrawingLayer("findings", List.copyOf(badges)));
        return new Drawing(
                "Plan of " + PlainText.of(drawn.site().name()) + ", both states",
                "The later state is drawn in full. Dashed lines and rings show where things that have moved or gone were"
                        + " before. Numbers mark findings that the list explains.",
                view,
                ScaleBar.GroundUnit.of(drawn.site()),
                layers.stream().filter(layer -> !layer.shapes().isEmpty()).toList());
    }

    private List<Shape> before() {
        List<Shape> shapes = new ArrayList<>();
        comparison.features().removed().stream()
                .filter(ComparisonDrawing::isDrawn)
                .forEach(feature -> add(feature, "was here, and is gone", shapes));
        Set<Feature> moved = comparison.data().stream()
                .filter(change ->
                        change.kind() == DataChange.Kind.MOVED && change.what().equals("in plan"))
                .flatMap(change -> change.feature().stream())
                .collect(java.util.stream.Collectors.toSet());
        for (FeaturePair pair : comparison.features().pairs()) {
            if (moved.contains(pair.after()) && isDrawn(pair.before())) {
                add(pair.before(), "was here", shapes);
                way(pair).ifPresent(shapes::add);
            }
        }
        return shapes;
    }

    /** Spots and the ground are left out, as on every plan: they would bury it. */
    private static boolean isDrawn(Feature feature) {
        return switch (feature.role()) {
            case SPOT, SOIL, DRAINAGE_AREA, CONTOUR, BREAKLINE, GROUND, PROPOSED_GROUND, AS_BUILT -> false;
            default -> true;
        };
    }

    private static void add(Feature feature, String what, List<Shape> shapes) {
        String title = FeatureName.of(feature) + " " + what;
        Geometry geometry = feature.geometry();
        switch (geometry.getDimension()) {
            case 0 ->
                Stream.of(geometry.getCoordinates())
                        .forEach(place -> shapes.add(new Shape.Sign(Look.BEFORE_PLACE, place, title)));
            case 1 -> shapes.add(new Shape.Line(Look.BEFORE, geometry, title));
            default -> shapes.add(new Shape.Line(Look.BEFORE, geometry.getBoundary(), title));
        }
    }

    /** The way of a point from where it was to where it is. */
    private static Optional<Shape> way(FeaturePair pair) {
        if (pair.before().geometry().getDimension() != 0
                || pair.after().geometry().getDimension() != 0) {
            return Optional.empty();
        }
        Coordinate[] ends = {
            pair.before().geometry().getCoordinate(), pair.after().geometry().getCoordinate()
        };
        return Optional.of(new Shape.Line(
                Look.BEFORE, LINES.createLineString(ends), FeatureName.of(pair.after()) + " has moved along here"));
    }

    private List<Shape> points() {
        return comparison.after().site().features(Role.AS_BUILT).stream()
                .<Shape>map(point ->
                        new Shape.Sign(Look.of(point), point.geometry().getCoordinate(), FeatureName.of(point)))
                .toList();
    }
}
