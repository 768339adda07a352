package org.fallrule.check.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Limits;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;

/** How one inlet stands to the hollow that it is to drain, or to the lowest ground around it. */
final class InletAtLowPoint {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final SiteAnalysis analysis;
    private final Terms terms;
    private final Feature inlet;

    InletAtLowPoint(SiteAnalysis analysis, Terms terms, Feature inlet) {
        this.analysis = analysis;
        this.terms = terms;
        this.inlet = inlet;
    }

    /** What is to be said of it: of the nearest hollow, or of the ground around it where no water stands. */
    List<Observation> among(List<Hollow> hollows) {
        double look = terms.get(LowPoint.LOOK).si();
        Geometry place = GEOMETRY.createPoint(inlet.geometry().getCoordinate());
        Optional<Hollow> nearest = hollows.stream()
                .filter(hollow -> hollow.water().isWithinDistance(place, look + Dimension.LENGTH.tolerance()))
                .min(Comparator.comparingDouble(hollow -> hollow.water().distance(place)));
        return nearest.map(this::inHollow).orElseGet(this::onSlope);
    }

    private List<Observation> inHollow(Hollow hollow) {
        Geometry bottom =
                hollow.pond().bottom(new Length(terms.get(LowPoint.AS_LOW).si()));
        Coordinate[] ends = DistanceOp.nearestPoints(inlet.geometry(), bottom);
        Length off = new Length(ends[0].distance(ends[1]));
        double accuracy = Accuracy.ofDistanceOnGround(analysis, inlet).metres();
        List<Observation> observations = new ArrayList<>();
        terms.get(LowPoint.OFF)
                .hold(
                        inlet,
                        inlet.attributes(),
                        asked -> Observation.measured(
                                inlet, asked.against("distance to the bottom of the hollow", off, accuracy)))
                .map(seen -> seen.at(GEOMETRY.createLineString(ends))
                        .noting("the hollow is " + hollow.spoken(analysis.site())))
                .ifPresent(observations::add);
        terms.find(LowPoint.RIM)
                .flatMap(limits -> limits.hold(
                        inlet,
                        inlet.attributes(),
                        asked -> inlet.get(Attribute.RIM)
                                .map(rim -> height(asked, "rim above the bottom of the hollow", rim, hollow.lowest()))
                                .orElseGet(() -> Observation.cannotTell(
                                        inlet, new Missing("rim of " + inlet.spoken(), "give rim")))))
                .ifPresent(observations::add);
        return observations;
    }

    private List<Observation> onSlope() {
        String within =
                "within " + analysis.site().printed(terms.get(LowPoint.LOOK).si()) + " of it";
        Optional<Coordinate> lowest = lowestAround(terms.get(LowPoint.LOOK).si());
        Optional<Elevation> ground = analysis.ground()
                .flatMap(surface -> surface.elevationAt(inlet.geometry().getCoordinate()));
        if (lowest.isEmpty() || ground.isEmpty()) {
            return List.of(Observation.cannotTell(
                    inlet,
                    new Missing(
                            "the ground around " + inlet.spoken(),
                            "take spot elevations at it and all around, " + within)));
        }
        String none = "no water stands " + within + " by the ground given";
        if (terms.find(LowPoint.RIM).isEmpty()) {
            return List.of(Observation.plain(Outcome.NOT_APPLICABLE, inlet).noting(none));
        }
        Optional<Elevation> rim = inlet.get(Attribute.RIM);
        Elevation low = new Elevation(lowest.get().getZ());
        String of = (rim.isPresent() ? "rim" : "ground at it") + " above the lowest ground " + within;
        return terms
                .get(LowPoint.RIM)
                .hold(inlet, inlet.attributes(), asked -> height(asked, of, rim.orElse(ground.get()), low))
                .map(seen -> seen.at(toward(lowest.get())).noting(none))
                .stream()
                .toList();
    }

    private Observation height(Limits.Answer.Asked asked, String of, Elevation rim, Elevation lowest) {
        double accuracy = Accuracy.ofHeightAtGround(analysis, inlet).metres();
        return Observation.measured(inlet, asked.against(of, rim.above(lowest), accuracy));
    }

    private Geometry toward(Coordinate place) {
        return GEOMETRY.createLineString(new Coordinate[] {inlet.geometry().getCoordinate(), place});
    }

    /** The lowest place within so many metres, with Z; nothing where some of the ground is not known. */
    private Optional<Coordinate> lowestAround(double look) {
        double step = analysis.flow().grid().map(grid -> grid.spacing()).orElse(look);
        Coordinate middle = inlet.geometry().getCoordinate();
        int steps = (int) Math.floor(look / step);
        Optional<Coordinate> lowest = Optional.empty();
        for (int row = -steps; row <= steps; row++) {
            for (int column = -steps; column <= steps; column++) {
                Coordinate place = new Coordinate(middle.x + column * step, middle.y + row * step);
                if (place.distance(middle) > look) {
                    continue;
                }
                Optional<Elevation> level = analysis.ground().flatMap(ground -> ground.elevationAt(place));
                if (level.isEmpty()) {
                    return Optional.empty();
                }
                place.setZ(level.get().metres());
                lowest = lowest.filter(low -> low.getZ() <= place.getZ()).or(() -> Optional.of(place));
            }
        }
        return lowest;
    }
}
