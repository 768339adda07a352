package org.fallrule.check.ground;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;

/** Whether a basin stands where the water gathers that it is to drain. */
@AutoService(Check.class)
public final class LowPoint implements Check {
    static final Parameter<Selection> OF =
            Parameter.features("of", "the inlets that take water from the ground", Role.INLET);
    static final Parameter<Limits> OFF = Parameter.limit(
                    "off_at_most",
                    Bound.AT_MOST,
                    Dimension.LENGTH,
                    "greatest plan distance from the inlet to the bottom of the hollow that it is to drain")
            .always();
    static final Parameter<Limits> RIM = Parameter.limit(
            "rim_at_most",
            Bound.AT_MOST,
            Dimension.LENGTH,
            "how far the rim may stand above the bottom of the hollow; where there is no hollow, above the lowest ground that"
                    + " is looked at, the ground counting for a rim that is not given; not asked when it is not given");
    static final Parameter<Quantity> DEEPER = Parameter.quantity(
                    "pond_deeper_than",
                    Dimension.LENGTH,
                    "water that stands less deep than this does not make a hollow")
            .always();
    static final Parameter<Quantity> AS_LOW = Parameter.quantity(
                    "as_low_as",
                    Dimension.LENGTH,
                    "ground that lies no more than this above the lowest place of the hollow is its bottom")
            .always();
    static final Parameter<Quantity> LOOK = Parameter.quantity(
                    "look_within", Dimension.LENGTH, "how far from the inlet a hollow is looked for")
            .always();

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "low_point";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "How far each inlet stands from the bottom of the hollow that it is to drain, and its rim above that"
                        + " bottom. The finished ground is filled until water runs off from everywhere; the hollow is the"
                        + " water so filled in which the inlet stands, or else the nearest. Where there is none the rim is"
                        + " held against the lowest ground nearby, to which the water runs past the inlet.",
                "off = plan distance from the inlet to the ground within as_low_as of the hollow's lowest place; rim height ="
                        + " rim - lowest place",
                "Filling after Barnes, Lehman and Mulla, Computers & Geosciences 62 (2014); that a basin stands at a low point"
                        + " is common practice.",
                List.of(
                        "hollows between spot elevations, and those narrower than the grid of 0.25 m",
                        "half a cell of that grid in the outline of the bottom",
                        "low places that are to be graded but are not in the ground that is given",
                        "curbs, walls and edges of paving that hold water back",
                        "water that is caught on the slope, as by a trench drain across it"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(OF, OFF, RIM, DEEPER, AS_LOW, LOOK);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.INLET), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection of = terms.get(OF);
        List<Feature> inlets = of.candidates(analysis.site());
        List<Hollow> hollows = inlets.isEmpty()
                ? List.of()
                : Hollow.deeperThan(terms.get(DEEPER).si(), analysis);
        List<Observation> observations = new ArrayList<>();
        for (Feature inlet : inlets) {
            if (of.chooses(inlet) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(inlet, of.lacking(inlet)));
            } else {
                observations.addAll(observe(analysis, terms, inlet, hollows));
            }
        }
        return observations;
    }

    private static List<Observation> observe(SiteAnalysis analysis, Terms terms, Feature inlet, List<Hollow> hollows) {
        double look = terms.get(LOOK).si();
        Geometry place = GEOMETRY.createPoint(inlet.geometry().getCoordinate());
        Optional<Hollow> nearest = hollows.stream()
                .filter(hollow -> hollow.water().isWithinDistance(place, look + Dimension.LENGTH.tolerance()))
                .min(Comparator.comparingDouble(hollow -> hollow.water().distance(place)));
        return nearest.map(hollow -> inHollow(analysis, terms, inlet, hollow))
                .orElseGet(() -> onSlope(analysis, terms, inlet));
    }

    private static List<Observation> inHollow(SiteAnalysis analysis, Terms terms, Feature inlet, Hollow hollow) {
        Geometry bottom = hollow.pond().bottom(new Length(terms.get(AS_LOW).si()));
        Coordinate[] ends = DistanceOp.nearestPoints(inlet.geometry(), bottom);
        Length off = new Length(ends[0].distance(ends[1]));
        double accuracy = Accuracy.ofDistanceOnGround(analysis, inlet).metres();
        List<Observation> observations = new ArrayList<>();
        terms.get(OFF)
                .hold(
                        inlet,
                        inlet.attributes(),
                        asked -> Observation.measured(
                                inlet, asked.against("distance to the bottom of the hollow", off, accuracy)))
                .map(seen -> seen.at(GEOMETRY.createLineString(ends)).noting("the hollow is " + hollow.spoken()))
                .ifPresent(observations::add);
        terms.find(RIM)
                .flatMap(limits -> limits.hold(
                        inlet,
                        inlet.attributes(),
                        asked -> inlet.get(Attribute.RIM)
                                .map(rim -> height(
                                        analysis,
                                        inlet,
                                        asked,
                                        "rim above the bottom of the hollow",
                                        rim,
                                        hollow.lowest()))
                                .orElseGet(() -> Observation.cannotTell(
                                        inlet, new Missing("rim of " + inlet.spoken(), "give rim")))))
                .ifPresent(observations::add);
        return observations;
    }

    private static List<Observation> onSlope(SiteAnalysis analysis, Terms terms, Feature inlet) {
        String within = "within " + Printed.feet(terms.get(LOOK).si()) + " of it";
        Optional<Coordinate> lowest =
                lowestAround(analysis, inlet, terms.get(LOOK).si());
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
        if (terms.find(RIM).isEmpty()) {
            return List.of(Observation.plain(Outcome.NOT_APPLICABLE, inlet).noting(none));
        }
        Optional<Elevation> rim = inlet.get(Attribute.RIM);
        Elevation low = new Elevation(lowest.get().getZ());
        String of = (rim.isPresent() ? "rim" : "ground at it") + " above the lowest ground " + within;
        return terms
                .get(RIM)
                .hold(
                        inlet,
                        inlet.attributes(),
                        asked -> height(analysis, inlet, asked, of, rim.orElse(ground.get()), low))
                .map(seen -> seen.at(toward(inlet, lowest.get())).noting(none))
                .stream()
                .toList();
    }

    private static Observation height(
            SiteAnalysis analysis,
            Feature inlet,
            Limits.Answer.Asked asked,
            String of,
            Elevation rim,
            Elevation lowest) {
        double accuracy = Accuracy.ofHeightAtGround(analysis, inlet).metres();
        return Observation.measured(inlet, asked.against(of, rim.above(lowest), accuracy));
    }

    private static Geometry toward(Feature inlet, Coordinate place) {
        return GEOMETRY.createLineString(new Coordinate[] {inlet.geometry().getCoordinate(), place});
    }

    /** The lowest place within so many metres, with Z; nothing where some of the ground is not known. */
    private static Optional<Coordinate> lowestAround(SiteAnalysis analysis, Feature inlet, double look) {
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
