package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Place;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Area;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Where an outfall may stand, or a basin.
 *
 * <p>An outfall: the own lot less what every binding rule bars to it, where the ground lies low enough that a straight pipe from
 * every inlet, begun under its cover, would still fall as it must. No pipe is shorter than the straight one, so that beyond this
 * area no outfall is possible; in it there may be none. What hangs on where the water runs over the ground is looked at every
 * {@link #LOOK} metres. A basin: the own lot less buildings and what is barred to it, at the bottom of the hollows that the rules on low
 * points speak of, advice or not.
 *
 * @param role outfall or inlet
 * @param area where it may stand; empty when it may nowhere
 * @param advised the part of it where no advice is against it either
 * @param barring the rules that bar ground of the lot to it
 */
public record StandingGround(Role role, Geometry area, Geometry advised, List<Rule> barring) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** How closely, in metres, the way of the water is looked at. */
    private static final double LOOK = 1;

    /** Pieces smaller than this, in square metres, are no room to stand. */
    private static final double SLIVER = 0.05;

    /** To the square centimetre and the millimetre: beyond that overlays differ from run to run. */
    private static final Comparator<Geometry> LARGEST_FIRST = Comparator.comparingLong(
                    (Geometry piece) -> -Math.round(piece.getArea() * 1e4))
            .thenComparingLong(piece -> Math.round(piece.getEnvelopeInternal().getMinY() * 1e3))
            .thenComparingLong(piece -> Math.round(piece.getEnvelopeInternal().getMinX() * 1e3));

    private static final List<String> EXACT = List.of("clearance", "within", "outside");

    public StandingGround {
        barring = List.copyOf(barring);
    }

    /** Where the outfall of a plan may stand; empty where the plan has no own lot or no ground, so that none can be told. */
    public static Optional<StandingGround> ofOutfall(SiteAnalysis analysis, RuleBook book) {
        return possible(analysis, book, outfall(analysis, new Coordinate(0, 0), 0));
    }

    /** Where a basin of the plan may stand; empty where the plan has no own lot or no ground. */
    public static Optional<StandingGround> ofBasin(SiteAnalysis analysis, RuleBook book) {
        return possible(analysis, book, basin(new Coordinate(0, 0)));
    }

    private static Optional<StandingGround> possible(SiteAnalysis analysis, RuleBook book, Feature probe) {
        List<String> lacking = book.locality().laying().lacking();
        if (analysis.site().ownLot().isEmpty() || analysis.ground().isEmpty() || !lacking.isEmpty()) {
            return Optional.empty();
        }
        Laying laying = book.locality().laying();
        List<Rule> binding = book.rules().stream()
                .filter(rule -> rule.weight() == Weight.MUST || new RuleKeys(rule).isOf("low_point"))
                .toList();
        Geometry area = area(analysis, laying, binding, probe, true);
        Geometry advised = area.isEmpty()
                ? area
                : area.intersection(area(analysis, laying, weighing(book, List.of(Weight.SHOULD)), probe, true));
        List<Rule> barring = BarredGround.of(analysis, binding, probe, true).stream()
                .filter(each -> each.area()
                        .intersects(analysis.site().ownLot().orElseThrow().geometry()))
                .map(BarredGround.Barred::rule)
                .distinct()
                .toList();
        return Optional.of(new StandingGround(probe.role(), area, whole(advised), barring));
    }

    private static List<Rule> weighing(RuleBook book, List<Weight> weights) {
        return book.rules().stream()
                .filter(rule -> weights.contains(rule.weight()))
                .toList();
    }

    /** Its pieces, the largest first; of those as large, the southernmost, then the westernmost. */
    public List<Geometry> pieces() {
        List<Geometry> pieces = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            if (!area.getGeometryN(i).isEmpty()) {
                pieces.add(area.getGeometryN(i));
            }
        }
        pieces.sort(LARGEST_FIRST);
        return pieces;
    }

    public Area size() {
        return new Area(area.getArea());
    }

    /** An outfall as the plan has it, or one in daylight, standing at a place. */
    static Feature outfall(SiteAnalysis analysis, Coordinate place, double level) {
        Optional<Feature> drawn =
                analysis.site().features(Role.OUTFALL).stream().findFirst();
        Attributes attributes = Attributes.none()
                .with(Attribute.KIND, "daylight")
                .with(Attribute.STATUS, "proposed")
                .with(Attribute.INVERT, new Elevation(level));
        Attributes known = drawn.flatMap(each -> each.get(Attribute.GROUND_COVER))
                .map(cover -> attributes.with(Attribute.GROUND_COVER, cover))
                .orElse(attributes);
        return at(Role.OUTFALL, drawn.map(Feature::id).orElse("OF-1"), place, known);
    }

    static Feature basin(Coordinate place) {
        return at(
                Role.INLET,
                "basin",
                place,
                Attributes.none().with(Attribute.KIND, "basin").with(Attribute.STATUS, "proposed"));
    }

    private static Feature at(Role role, String id, Coordinate place, Attributes attributes) {
        return new Feature(
                role,
                id,
                GEOMETRY.createPoint(place),
                attributes,
                Place.of(role.word() + ".geojson").feature(id));
    }

    /** Where some rules let an outfall or basin stand, on ground low enough for it. */
    static Geometry area(SiteAnalysis analysis, Laying laying, List<Rule> rules, Feature probe, boolean surely) {
        Geometry lot = analysis.site().ownLot().orElseThrow().geometry();
        List<Geometry> barred = BarredGround.of(analysis, rules, probe, surely).stream()
                .map(BarredGround.Barred::area)
                .toList();
        Geometry free = lot.difference(GEOMETRY.createGeometryCollection(barred.toArray(new Geometry[0]))
                .union());
        Geometry low = probe.role() == Role.OUTFALL
                ? lowEnough(analysis, laying, rules, lot, surely)
                : hollows(analysis, rules, lot).difference(buildings(analysis));
        return whole(probed(analysis, rules, probe, whole(free.intersection(low))));
    }

    /** Without lines, points and slivers that an overlay leaves. */
    private static Geometry whole(Geometry area) {
        List<Geometry> pieces = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            Geometry piece = area.getGeometryN(i);
            if (piece.getDimension() == 2 && piece.getArea() > SLIVER) {
                pieces.add(piece);
            }
        }
        return pieces.isEmpty() ? GEOMETRY.createPolygon() : GEOMETRY.buildGeometry(pieces);
    }

    private static Geometry lowEnough(
            SiteAnalysis analysis, Laying laying, List<Rule> rules, Geometry lot, boolean surely) {
        Stock stock = new Stock(laying);
        Ground ground = new Ground(analysis);
        Heights heights = new Heights(ground, new LineRules(analysis, rules, surely), stock, stock.smallest());
        List<Coordinate> starts = new ArrayList<>();
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            Coordinate place = inlet.geometry().getCoordinate();
            heights.atInlet(place).ifPresent(level -> starts.add(new Coordinate(place.x, place.y, level)));
        }
        double slope = heights.leastSlope();
        return LowGround.of(
                lot.getEnvelopeInternal(),
                LOOK,
                place -> ground.at(place)
                        .map(level -> starts.stream()
                                .mapToDouble(start -> level + slope * start.distance(place) - start.getZ())
                                .max()
                                .orElse(-1)));
    }

    private static Geometry hollows(SiteAnalysis analysis, List<Rule> rules, Geometry lot) {
        List<RuleKeys> asking = rules.stream()
                .map(RuleKeys::new)
                .filter(rule -> rule.isOf("low_point"))
                .toList();
        Geometry near = lot;
        for (RuleKeys rule : asking) {
            near = near.intersection(bottoms(analysis, rule));
        }
        return near;
    }

    private static Geometry buildings(SiteAnalysis analysis) {
        return GEOMETRY.createGeometryCollection(analysis.site().features(Role.BUILDING).stream()
                        .map(Feature::geometry)
                        .toArray(Geometry[]::new))
                .union();
    }

    private static Geometry bottoms(SiteAnalysis analysis, RuleKeys rule) {
        double deeper = rule.si("pond_deeper_than").orElse(0.0);
        double off = rule.limits("off_at_most")
                .flatMap(limits -> BarredGround.asked(limits, basin(new Coordinate(0, 0))))
                .orElse(0.0);
        Length asLow = new Length(rule.si("as_low_as").orElse(0.0));
        Geometry[] bottoms = analysis.flow().filled().stream()
                .flatMap(filled -> filled.ponds().stream())
                .filter(pond -> pond.depth().metres() > deeper)
                .map(pond -> pond.bottom(asLow).buffer(off))
                .toArray(Geometry[]::new);
        return GEOMETRY.createGeometryCollection(bottoms).union();
    }

    /** Less the squares in whose middle some rule that hangs on more than distances does not hold. */
    private static Geometry probed(SiteAnalysis analysis, List<Rule> rules, Feature probe, Geometry area) {
        List<Rule> others = rules.stream()
                .filter(rule -> !EXACT.contains(rule.check().name()) && speaksOf(rule, probe))
                .toList();
        if (others.isEmpty() || area.isEmpty()) {
            return area;
        }
        List<Feature> probes = probes(probe, area);
        List<Feature> standing = Probing.meeting(analysis, others, probes);
        Geometry[] squares = standing.stream()
                .map(each ->
                        ((Point) each.geometry()).getEnvelope().buffer(LOOK / 2).getEnvelope())
                .toArray(Geometry[]::new);
        return area.intersection(GEOMETRY.createGeometryCollection(squares).union());
    }

    private static boolean speaksOf(Rule rule, Feature probe) {
        return probe.role() == Role.OUTFALL
                && rule.check().parameters().stream()
                        .anyMatch(parameter -> new RuleKeys(rule).selects(parameter.name(), Role.OUTFALL));
    }

    private static List<Feature> probes(Feature probe, Geometry area) {
        List<Feature> probes = new ArrayList<>();
        Envelope box = area.getEnvelopeInternal();
        PreparedGeometry within = PreparedGeometryFactory.prepare(area.buffer(LOOK / 2));
        for (double x = box.getMinX(); x < box.getMaxX() + LOOK; x += LOOK) {
            for (double y = box.getMinY(); y < box.getMaxY() + LOOK; y += LOOK) {
                Point place = GEOMETRY.createPoint(new Coordinate(x, y));
                if (within.intersects(place)) {
                    String id = "probe " + probes.size();
                    probes.add(new Feature(probe.role(), id, place, probe.attributes(), probe.origin()));
                }
            }
        }
        return probes;
    }

    /** Whether an outcome leaves a place to stand. */
    static boolean isAgainst(Outcome outcome) {
        return outcome == Outcome.FAILS || outcome == Outcome.BORDERLINE;
    }
}
