package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/** The lot as whoever lays a pipe of one size meets it: where it may lie, how high, and what a step of it costs. */
final class Field {
    /** How closely, in metres, a step is looked at. */
    private static final double LOOK = 0.2;

    /** The ground that bars a line around its inlet cannot be kept clear of within this many metres. */
    private static final double AT_INLET = 1.0;

    /** Crossings had better be no flatter than this, however much a rule would excuse. */
    private static final double SQUAREST = Math.toRadians(60);

    private final SiteAnalysis analysis;
    private final Heights heights;
    private final Laying laying;
    private final double width;
    private final double below;
    private final List<Area> barred = new ArrayList<>();
    private final List<Strip> strips = new ArrayList<>();
    private final List<Line> utilities = new ArrayList<>();
    private final List<Area> roots = new ArrayList<>();
    private final List<Area> besideBuildings = new ArrayList<>();

    private record Area(Envelope box, PointOnGeometryLocator locator) {
        static Area of(Geometry shape) {
            return new Area(shape.getEnvelopeInternal(), new IndexedPointInAreaLocator(shape));
        }

        boolean holds(Coordinate place) {
            return box.contains(place) && locator.locate(place) == Location.INTERIOR;
        }
    }

    private record Strip(LineRules.Corridor corridor, List<LineSegment> axis) {}

    private record Line(Feature utility, List<LineSegment> axis, double handDig) {}

    /**
     * @param asked the rules that are to be met
     * @param rules what they ask of a line
     * @param noted every rule of the book, also those that only tell
     * @param size the pipe's nominal diameter
     * @param blocked ground to keep out of besides
     */
    Field(
            SiteAnalysis analysis,
            List<Rule> asked,
            LineRules rules,
            LineRules noted,
            Ground ground,
            Stock stock,
            Laying laying,
            Length size,
            boolean surely,
            List<Geometry> blocked) {
        this.analysis = analysis;
        this.heights = new Heights(ground, rules, stock, size);
        this.laying = laying;
        this.width = stock.trench(size);
        this.below = stock.below(size);
        Feature pipe = stock.pipe(size);
        BarredGround.of(analysis, asked, pipe, surely).forEach(each -> barred.add(Area.of(each.area())));
        blocked.forEach(area -> barred.add(Area.of(area)));
        analysis.site().ownLot().map(Feature::geometry).ifPresent(this::beyond);
        analysis.site().features(Role.BUILDING).forEach(building -> building(building.geometry()));
        rules.corridors(pipe, SQUAREST)
                .forEach(each ->
                        strips.add(new Strip(each, segments(each.utility().geometry()))));
        analysis.site()
                .features(Role.UTILITY)
                .forEach(utility -> utilities.add(new Line(
                        utility,
                        segments(utility.geometry()),
                        noted.handDig(pipe, utility).orElse(0.0))));
        analysis.site()
                .features(Role.TREE)
                .forEach(tree -> noted.rootZone(tree)
                        .ifPresent(radius -> roots.add(Area.of(tree.geometry().buffer(radius)))));
    }

    /** A trench is dug on the own lot alone. */
    private void beyond(Geometry lot) {
        Geometry around = lot.getEnvelope().buffer(lot.getEnvelopeInternal().getDiameter());
        barred.add(Area.of(around.difference(lot.buffer(-width / 2))));
    }

    private void building(Geometry building) {
        barred.add(Area.of(building));
        besideBuildings.add(Area.of(building.buffer(laying.metres(Laying.Measure.FROM_BUILDING))));
    }

    static List<LineSegment> segments(Geometry geometry) {
        List<LineSegment> segments = new ArrayList<>();
        for (Object each : LinearComponentExtracter.getLines(geometry)) {
            Coordinate[] places = ((LineString) each).getCoordinates();
            for (int i = 1; i < places.length; i++) {
                segments.add(new LineSegment(places[i - 1], places[i]));
            }
        }
        return segments;
    }

    Heights heights() {
        return heights;
    }

    /** Whether a pipe may lie from one place straight to another, near an inlet as near as it must. */
    boolean isOpen(Coordinate from, Coordinate to, Coordinate inlet) {
        double length = from.distance(to);
        int looks = Math.max(1, (int) Math.ceil(length / LOOK));
        LineSegment step = new LineSegment(from, to);
        for (int i = 0; i <= looks; i++) {
            if (isBarred(step.pointAlong((double) i / looks), inlet)) {
                return false;
            }
        }
        return strips.stream().allMatch(strip -> passes(strip, step, inlet))
                && heights.ground(from).isPresent()
                && heights.ground(to).isPresent();
    }

    private boolean isBarred(Coordinate place, Coordinate inlet) {
        for (Area area : barred) {
            if (area.holds(place) && !(place.distance(inlet) <= AT_INLET && area.holds(inlet))) {
                return true;
            }
        }
        return false;
    }

    private static boolean passes(Strip strip, LineSegment step, Coordinate inlet) {
        for (LineSegment axis : strip.axis) {
            if (isWithin(strip.corridor.half(), axis, step)
                    && angle(axis, step) < strip.corridor.least()
                    && axis.distance(step) < strip.corridor.half()
                    && axis.distance(inlet) >= strip.corridor.half()) {
                return false;
            }
        }
        return true;
    }

    /** Whether the boxes of two pieces come so near; their distance is reckoned only then. */
    private static boolean isWithin(double metres, LineSegment one, LineSegment other) {
        return Math.min(one.p0.x, one.p1.x) - metres <= Math.max(other.p0.x, other.p1.x)
                && Math.min(other.p0.x, other.p1.x) - metres <= Math.max(one.p0.x, one.p1.x)
                && Math.min(one.p0.y, one.p1.y) - metres <= Math.max(other.p0.y, other.p1.y)
                && Math.min(other.p0.y, other.p1.y) - metres <= Math.max(one.p0.y, one.p1.y);
    }

    private static double angle(LineSegment one, LineSegment other) {
        double angle = Math.abs(one.angle() - other.angle()) % Math.PI;
        return Math.min(angle, Math.PI - angle);
    }

    /** What a straight step costs without its trench. */
    double cost(Coordinate from, Coordinate to) {
        LineSegment step = new LineSegment(from, to);
        Coordinate middle = step.midPoint();
        double feet = step.getLength() / Unit.FOOT.toSi();
        double perFoot = laying.weight(Laying.Weighed.PIPE_PER_FOOT);
        double crossings = 0;
        boolean byHand = false;
        for (Line line : utilities) {
            for (LineSegment axis : line.axis) {
                byHand |= axis.distance(middle) < line.handDig;
                crossings += crosses(axis, step) ? 1 : 0;
            }
        }
        perFoot += byHand ? laying.weight(Laying.Weighed.HAND_DIG_PER_FOOT) : 0;
        perFoot += holds(roots, middle) ? laying.weight(Laying.Weighed.ROOT_ZONE_PER_FOOT) : 0;
        perFoot += holds(besideBuildings, middle) ? laying.weight(Laying.Weighed.BESIDE_BUILDING_PER_FOOT) : 0;
        perFoot += isPaved(middle) ? laying.weight(Laying.Weighed.PAVING_PER_FOOT) : 0;
        return perFoot * feet + crossings * laying.weight(Laying.Weighed.EACH_CROSSING);
    }

    /** A crossing exactly where one step ends and the next begins is counted once. */
    private static boolean crosses(LineSegment axis, LineSegment step) {
        return Envelope.intersects(axis.p0, axis.p1, step.p0, step.p1)
                && axis.intersection(step) != null
                && axis.distance(step.p0) > 1e-9;
    }

    private static boolean holds(List<Area> areas, Coordinate place) {
        return areas.stream().anyMatch(area -> area.holds(place));
    }

    private boolean isPaved(Coordinate place) {
        return analysis.surfaces()
                .at(place)
                .filter(above -> !above.equals("lawn"))
                .isPresent();
    }

    /** What a metre of trench costs whose pipe's invert lies so many metres under the ground. */
    double trenchPerMetre(double depth) {
        double volume = width * Math.max(0, depth + below);
        return volume / Unit.CUBIC_YARD.toSi() * laying.weight(Laying.Weighed.TRENCH_PER_CUBIC_YARD);
    }

    double fitting() {
        return laying.weight(Laying.Weighed.EACH_FITTING);
    }
}
