package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Volume;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * What a drain takes to build. Volumes are of ground in place, before it bulks.
 *
 * <p>The trench is reckoned by average end areas: between two sections its volume is their distance times the mean of their areas
 * (the method of the usual surveying handbooks), with a section every foot and at every end. Its walls are upright, as wide
 * apart as the rule book's {@code laying} has it. Stone lies under the pipe and around it up to its top; spoil is what stone and
 * pipe leave no room for.
 *
 * @param pipe length of pipe by nominal diameter
 * @param fittings how many of each kind
 * @param trench volume dug
 * @param stone volume of stone around the pipe
 * @param spoil volume to haul off
 * @param handDig length in the zones of utilities, where it is dug by hand
 * @param crossings how many utilities are crossed
 * @param roots length in root zones
 * @param paving length under walks, drives and streets
 * @param besideBuildings length nearer to a building than a trench had better run
 */
public record Quantities(
        Map<Length, Length> pipe,
        Map<String, Integer> fittings,
        Volume trench,
        Volume stone,
        Volume spoil,
        Length handDig,
        int crossings,
        Length roots,
        Length paving,
        Length besideBuildings) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** A section every foot. */
    private static final double STEP = Unit.FOOT.toSi();

    public Quantities {
        pipe = new TreeMap<>(pipe);
        fittings = new LinkedHashMap<>(fittings);
    }

    static Quantities of(SiteAnalysis proposed, Stock stock, LineRules noted, Laying laying) {
        Map<Length, Length> pipe = new TreeMap<>();
        double trench = 0;
        double stone = 0;
        double inside = 0;
        List<Geometry> axes = new ArrayList<>();
        for (PipeRun run : proposed.network().runs()) {
            Length size = run.diameter().orElse(stock.smallest());
            double length = run.axis().getLength();
            double outside = Math.PI / 4 * stock.outside(size) * stock.outside(size) * length;
            pipe.merge(size, run.length(), Length::plus);
            trench += trench(proposed, run, stock, size);
            inside += outside;
            stone += stock.trench(size) * (stock.outside(size) + laying.metres(Laying.Measure.BEDDING)) * length
                    - outside;
            axes.add(run.axis());
        }
        Geometry drain = GEOMETRY.buildGeometry(axes);
        return new Quantities(
                pipe,
                fittings(proposed),
                new Volume(trench),
                new Volume(stone),
                new Volume(stone + inside),
                new Length(lengthIn(drain, handDigZones(proposed, noted, stock.pipe(stock.smallest())))),
                crossings(proposed, drain),
                new Length(lengthIn(drain, roots(proposed, noted))),
                new Length(lengthIn(drain, areas(proposed, List.of(Role.WALK, Role.DRIVE, Role.STREET), 0))),
                new Length(lengthIn(
                        drain, areas(proposed, List.of(Role.BUILDING), laying.metres(Laying.Measure.FROM_BUILDING)))));
    }

    /** Whether the plan says how deep every pipe lies all along. */
    static boolean canBeTold(SiteAnalysis plan) {
        return plan.network().runs().stream()
                .allMatch(run -> PipeProfile.of(run)
                        .filter(profile -> stations(run).stream()
                                .allMatch(station ->
                                        ground(plan, profile, station).isPresent()))
                        .isPresent());
    }

    private static double trench(SiteAnalysis proposed, PipeRun run, Stock stock, Length size) {
        PipeProfile profile = PipeProfile.of(run).orElseThrow();
        List<Double> stations = stations(run);
        List<Double> areas = new ArrayList<>();
        for (double station : stations) {
            double ground = ground(proposed, profile, station).orElseThrow().metres();
            double bottom = profile.invertAt(station).metres() - stock.below(size);
            areas.add(stock.trench(size) * Math.max(0, ground - bottom));
        }
        return averageEndAreas(areas, run.axis().getLength() / (stations.size() - 1));
    }

    private static List<Double> stations(PipeRun run) {
        double length = run.axis().getLength();
        int parts = Math.max(1, (int) Math.ceil(length / STEP));
        return IntStream.rangeClosed(0, parts).mapToObj(i -> length * i / parts).toList();
    }

    private static Optional<Elevation> ground(SiteAnalysis plan, PipeProfile profile, double station) {
        return plan.ground().flatMap(surface -> surface.elevationAt(profile.placeAt(station)));
    }

    /**
     * The volume between sections that stand evenly apart: V = sum of (A1 + A2) / 2 times the distance.
     *
     * @param areas of the sections, square metres
     * @param apart metres from one to the next
     */
    static double averageEndAreas(List<Double> areas, double apart) {
        double volume = 0;
        for (int i = 1; i < areas.size(); i++) {
            volume += (areas.get(i - 1) + areas.get(i)) / 2 * apart;
        }
        return volume;
    }

    private static Map<String, Integer> fittings(SiteAnalysis proposed) {
        Map<String, Integer> fittings = new LinkedHashMap<>();
        for (PipeRun run : proposed.network().runs()) {
            LineString axis = run.axis();
            for (int i = 1; i < axis.getNumPoints() - 1; i++) {
                bend(turn(axis.getCoordinateN(i - 1), axis.getCoordinateN(i), axis.getCoordinateN(i + 1)), fittings);
            }
            List<PipeRun> into = proposed.network().into(run.up());
            boolean isStructure = run.up().structure(Role.INLET).isPresent();
            if (into.size() > 1 && !isStructure) {
                fittings.merge("wye", into.size() - 1, Integer::sum);
            }
            boolean widens = into.stream().anyMatch(before -> !before.diameter().equals(run.diameter()));
            if (widens && !isStructure) {
                fittings.merge("increaser", 1, Integer::sum);
            }
        }
        int cleanouts = proposed.site().features(Role.CLEANOUT).size();
        if (cleanouts > 0) {
            fittings.put("cleanout", cleanouts);
        }
        return fittings;
    }

    private static double turn(Coordinate from, Coordinate at, Coordinate to) {
        return Math.toDegrees(Math.abs(Angle.diff(Angle.angle(from, at), Angle.angle(at, to))));
    }

    private static void bend(double degrees, Map<String, Integer> fittings) {
        long eighths = Math.round(degrees / 22.5);
        if (eighths > 0) {
            String kind = eighths == 1
                    ? "22.5 degree bend"
                    : eighths == 2 ? "45 degree bend" : "bend of more than 45 degrees";
            fittings.merge(kind, 1, Integer::sum);
        }
    }

    private static Geometry handDigZones(SiteAnalysis proposed, LineRules noted, Feature pipe) {
        return union(proposed.site().features(Role.UTILITY).stream()
                .flatMap(utility -> noted
                        .handDig(pipe, utility)
                        .map(zone -> utility.geometry().buffer(zone))
                        .stream())
                .toList());
    }

    private static Geometry roots(SiteAnalysis proposed, LineRules noted) {
        return union(proposed.site().features(Role.TREE).stream()
                .flatMap(tree ->
                        noted.rootZone(tree).map(radius -> tree.geometry().buffer(radius)).stream())
                .toList());
    }

    private static Geometry areas(SiteAnalysis proposed, List<Role> roles, double around) {
        return union(roles.stream()
                .flatMap(role -> proposed.site().features(role).stream())
                .map(feature -> feature.geometry().buffer(around))
                .toList());
    }

    private static Geometry union(List<Geometry> areas) {
        return GEOMETRY.createGeometryCollection(areas.toArray(new Geometry[0])).union();
    }

    private static double lengthIn(Geometry drain, Geometry area) {
        return drain.intersection(area).getLength();
    }

    private static int crossings(SiteAnalysis proposed, Geometry drain) {
        return proposed.site().features(Role.UTILITY).stream()
                .mapToInt(utility -> drain.intersection(utility.geometry()).getNumPoints())
                .sum();
    }

    /** What the weights of a book make of it, in cubic yards of trench. */
    public double cost(Laying laying) {
        double feet = pipe.values().stream()
                .mapToDouble(length -> length.in(Unit.FOOT))
                .sum();
        int pieces = fittings.values().stream().mapToInt(count -> count).sum();
        return trench.in(Unit.CUBIC_YARD) * laying.weight(Laying.Weighed.TRENCH_PER_CUBIC_YARD)
                + feet * laying.weight(Laying.Weighed.PIPE_PER_FOOT)
                + pieces * laying.weight(Laying.Weighed.EACH_FITTING)
                + handDig.in(Unit.FOOT) * laying.weight(Laying.Weighed.HAND_DIG_PER_FOOT)
                + crossings * laying.weight(Laying.Weighed.EACH_CROSSING)
                + roots.in(Unit.FOOT) * laying.weight(Laying.Weighed.ROOT_ZONE_PER_FOOT)
                + paving.in(Unit.FOOT) * laying.weight(Laying.Weighed.PAVING_PER_FOOT)
                + besideBuildings.in(Unit.FOOT) * laying.weight(Laying.Weighed.BESIDE_BUILDING_PER_FOOT);
    }

    /** The length of stone that the outfall's apron has. */
    static Length apron(SiteAnalysis proposed) {
        return proposed.site().features(Role.OUTFALL).stream()
                .flatMap(outfall -> outfall.get(Attribute.APRON_LENGTH).stream())
                .findFirst()
                .orElse(new Length(0));
    }
}
