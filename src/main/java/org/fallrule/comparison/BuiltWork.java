package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Fault;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * What was measured of the work after construction: features whose status is {@code as_built}, and the points of the layer
 * {@code as_built}, each {@code measured_on} a part of the design and of a kind: {@code invert}, {@code rim}, or of a pipe
 * {@code invert_up} and {@code invert_down}.
 */
final class BuiltWork {
    private final SiteAnalysis after;
    private final FeaturePairs features;
    private final List<Feature> points;

    BuiltWork(SiteAnalysis after, FeaturePairs features) {
        this.after = after;
        this.features = features;
        this.points = after.site().features(Role.AS_BUILT);
    }

    static boolean isBuilt(Feature feature) {
        return feature.get(Attribute.STATUS).orElse("").equals("as_built");
    }

    /** The feature as built that a part of the design has become. */
    Optional<Feature> feature(Feature design) {
        return features.after(design).filter(BuiltWork::isBuilt);
    }

    /** The pipe as built, turned with its flow. */
    Optional<PipeRun> run(Feature pipe) {
        return feature(pipe).flatMap(after.network()::runOf);
    }

    /** The height that was measured of a kind of point on a part of the design. */
    Optional<Elevation> height(Feature design, String kind) {
        Optional<Elevation> ofPoint = point(design, kind).flatMap(BuiltWork::height);
        return ofPoint.or(() -> design.role() == Role.PIPE ? ofPipe(design, kind) : ofStructure(design, kind));
    }

    private Optional<Elevation> ofPipe(Feature pipe, String kind) {
        return run(pipe).flatMap(run -> kind.equals("invert_up") ? run.invertUp() : run.invertDown());
    }

    private Optional<Elevation> ofStructure(Feature structure, String kind) {
        Attribute<Elevation> attribute = kind.equals("rim") ? Attribute.RIM : Attribute.INVERT;
        return feature(structure).flatMap(each -> each.get(attribute));
    }

    private static Optional<Elevation> height(Feature point) {
        double z = point.geometry().getCoordinate().getZ();
        return point.get(Attribute.ELEVATION)
                .or(() -> Double.isFinite(z) ? Optional.of(new Elevation(z)) : Optional.empty());
    }

    /** The points on a part of the design. */
    List<Feature> points(Feature design) {
        return points.stream().filter(point -> isOn(point, design)).toList();
    }

    Optional<Feature> point(Feature design, String kind) {
        return points(design).stream()
                .filter(point -> point.get(Attribute.KIND).orElse("").equals(kind))
                .findFirst();
    }

    /** How far the work lies from a part of the design in plan; nothing when it was not measured. */
    Optional<Length> offset(Feature design, Geometry designed) {
        Optional<Geometry> built = design.role() == Role.PIPE
                ? run(design).map(PipeRun::axis)
                : feature(design).map(Feature::geometry);
        Optional<Double> ofFeature = built.map(each -> Pairing.distance(designed, each));
        return Stream.concat(ofFeature.stream(), points(design).stream().map(point -> offset(point, design, designed)))
                .max(Double::compare)
                .map(Length::new);
    }

    /** A point on an end of a pipe from that end, any other from the nearest place of the design. */
    private static double offset(Feature point, Feature design, Geometry designed) {
        String kind = point.get(Attribute.KIND).orElse("");
        Coordinate[] axis = designed.getCoordinates();
        Coordinate place = point.geometry().getCoordinate();
        if (design.role() == Role.PIPE && kind.equals("invert_up")) {
            return place.distance(axis[0]);
        }
        if (design.role() == Role.PIPE && kind.equals("invert_down")) {
            return place.distance(axis[axis.length - 1]);
        }
        return designed.distance(point.geometry());
    }

    /**
     * Half-width of the interval that a height of the work lies in, by the own column of what it was measured on or by the
     * survey; zero when not said.
     */
    double heightAccuracy(Feature design, String kind) {
        Optional<Feature> measured =
                point(design, kind).filter(point -> height(point).isPresent());
        return measured.or(() -> feature(design))
                .flatMap(each -> each.get(Attribute.VERTICAL_ACCURACY))
                .or(() -> after.site().survey().verticalAccuracy())
                .map(Length::metres)
                .orElse(0.0);
    }

    /** The same in plan. */
    double planAccuracy(Feature design) {
        return feature(design)
                .flatMap(each -> each.get(Attribute.HORIZONTAL_ACCURACY))
                .or(() -> after.site().survey().horizontalAccuracy())
                .map(Length::metres)
                .orElse(0.0);
    }

    /** The points that are on no part of the design, or say no kind that is measured there. */
    List<Fault> problems(List<Feature> designs) {
        List<Fault> problems = new ArrayList<>();
        for (Feature point : points) {
            List<Feature> on =
                    designs.stream().filter(design -> isOn(point, design)).toList();
            String kind = point.get(Attribute.KIND).orElse("");
            if (on.size() != 1) {
                problems.add(new Fault(
                        point.origin(),
                        "is measured on " + point.get(Attribute.MEASURED_ON).orElse("nothing that it names")
                                + ", which "
                                + (on.isEmpty() ? "is no part of the design" : "names several parts of the design")
                                + "; give measured_on the name of one pipe, inlet, cleanout or outfall"));
            } else if (!kinds(on.get(0)).contains(kind)) {
                problems.add(new Fault(
                        point.origin(),
                        "is of the kind " + (kind.isEmpty() ? "nothing" : kind)
                                + ", and nothing but its place is used; of a "
                                + on.get(0).role().spoken() + " wanted " + String.join(" or ", kinds(on.get(0)))));
            } else if (height(point).isEmpty()) {
                problems.add(new Fault(point.origin(), "has no elevation; give it in a column or as Z"));
            }
        }
        return problems;
    }

    private static List<String> kinds(Feature design) {
        return design.role() == Role.PIPE ? List.of("invert_up", "invert_down") : List.of("invert", "rim");
    }

    private static boolean isOn(Feature point, Feature design) {
        return point.get(Attribute.MEASURED_ON).filter(design.id()::equals).isPresent();
    }
}
