package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Lays a drain as high as the rules let it, each reach on one even grade: first down from the inlets, how high each place can
 * be under the cover asked with every pipe at its least slope; then up from the outfall, each reach as steep as cover, greatest
 * slope and crossings let it. A pipe passes over a utility where it comes high enough over, else it is laid under it.
 */
final class Grading {
    /** How closely, in metres, a reach is looked at. */
    private static final double STEP = 0.25;
    /** Inverts are given to this, in metres: a hundredth of a foot. */
    private static final double HUNDREDTH = Unit.FOOT.toSi() / 100;

    private final SiteAnalysis analysis;
    private final LineRules rules;
    private final LineRules noted;
    private final Stock stock;
    private final Ground ground;
    private final Map<Length, Heights> heights = new HashMap<>();

    /** @param noted every rule of the book: a pipe is laid no steeper than advised, since that takes only depth */
    Grading(SiteAnalysis analysis, LineRules rules, LineRules noted, Stock stock, Ground ground) {
        this.analysis = analysis;
        this.rules = rules;
        this.noted = noted;
        this.stock = stock;
        this.ground = ground;
    }

    /** A level that a reach may not lie above at a station, in metres from its upper end. */
    private record Cap(double station, double level) {}

    /** A crossing: the reach passes at or over one level or at or under another; both are inverts. */
    private record Pass(double station, double over, double under) {}

    private record Section(Drain.Reach reach, Heights heights, double greatest, List<Cap> caps, List<Pass> passes) {}

    /** The grades of a drain whose reaches have these sizes; nothing where it cannot fall as it must. */
    Optional<Grades> of(Drain drain, Map<Drain.Reach, Length> sizes) {
        Map<Drain.Reach, Section> sections = new HashMap<>();
        Map<Integer, Double> toOutfall = new HashMap<>();
        List<Drain.Reach> order = drain.inOrder();
        for (int i = order.size() - 1; i >= 0; i--) {
            Drain.Reach reach = order.get(i);
            double below = toOutfall.getOrDefault(reach.down(), 0.0);
            toOutfall.put(reach.up(), below + reach.length());
            Optional<Section> section = section(reach, sizes.getOrDefault(reach, stock.smallest()), below);
            if (section.isEmpty()) {
                return Optional.empty();
            }
            sections.put(reach, section.get());
        }
        return laid(drain, sizes, sections);
    }

    private Optional<Section> section(Drain.Reach reach, Length size, double below) {
        Heights high = heights.computeIfAbsent(size, any -> new Heights(ground, rules, stock, size));
        LengthIndexedLine line = new LengthIndexedLine(Axis.line(reach.axis()));
        List<Cap> caps = new ArrayList<>();
        for (double station : stations(reach)) {
            Optional<Double> level = high.highest(line.extractPoint(station), below + reach.length() - station);
            if (level.isEmpty()) {
                return Optional.empty();
            }
            caps.add(new Cap(station, level.get()));
        }
        return Optional.of(new Section(reach, high, noted.greatestSlope(stock.pipe(size)), caps, passes(reach, size)));
    }

    private static List<Double> stations(Drain.Reach reach) {
        List<Double> stations = new ArrayList<>();
        double length = reach.length();
        int steps = (int) Math.ceil(length / STEP);
        for (int i = 0; i <= steps; i++) {
            stations.add(length * i / Math.max(1, steps));
        }
        return stations;
    }

    private List<Pass> passes(Drain.Reach reach, Length size) {
        List<Pass> passes = new ArrayList<>();
        Feature pipe = stock.pipe(size);
        for (Feature utility : analysis.site().features(Role.UTILITY)) {
            double station = 0;
            for (int i = 1; i < reach.axis().size(); i++) {
                LineSegment piece =
                        new LineSegment(reach.axis().get(i - 1), reach.axis().get(i));
                for (LineSegment axis : Field.segments(utility.geometry())) {
                    Optional<Coordinate> met = Optional.ofNullable(piece.intersection(axis));
                    double at =
                            station + met.map(place -> place.distance(piece.p0)).orElse(0.0);
                    met.flatMap(place -> UtilityCrossing.topAt(analysis, utility, place))
                            .flatMap(top -> rules.window(pipe, utility, top.metres()))
                            .ifPresent(window -> passes.add(new Pass(
                                    at,
                                    window.overFrom() + stock.wall(size),
                                    window.underTo() - stock.outside(size) + stock.wall(size))));
                }
                station += piece.getLength();
            }
        }
        return passes;
    }

    /** Lays it, and lays it anew under each utility that it does not come over. */
    private Optional<Grades> laid(Drain drain, Map<Drain.Reach, Length> sizes, Map<Drain.Reach, Section> sections) {
        int most = sections.values().stream()
                .mapToInt(section -> section.passes().size())
                .sum();
        for (int attempt = 0; attempt <= most; attempt++) {
            Optional<Map<Integer, Double>> levels = levels(drain, sections);
            if (levels.isEmpty() || !duck(sections, levels.get())) {
                return levels.map(found -> new Grades(drain, found, sizes, leastOf(sections)));
            }
        }
        return Optional.empty();
    }

    private static double leastOf(Map<Drain.Reach, Section> sections) {
        return sections.values().stream()
                .mapToDouble(section -> section.heights().leastSlope())
                .max()
                .orElse(0);
    }

    /** Bars one more reach from passing over a utility where it comes too near to it; whether there was one. */
    private static boolean duck(Map<Drain.Reach, Section> sections, Map<Integer, Double> levels) {
        for (Section section : sections.values()) {
            double up = levels.getOrDefault(section.reach().up(), 0.0);
            double down = levels.getOrDefault(section.reach().down(), 0.0);
            for (Pass pass : section.passes()) {
                double level =
                        up + (down - up) * pass.station() / section.reach().length();
                if (level < pass.over() && level > pass.under() + 1e-9) {
                    section.caps().add(new Cap(pass.station(), pass.under()));
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<Map<Integer, Double>> levels(Drain drain, Map<Drain.Reach, Section> sections) {
        Map<Integer, Double> highest = fromAbove(drain, sections);
        Coordinate end = drain.places().get(drain.outfall()).place();
        double outfall = Math.ceil(ground.at(end).orElse(0.0) / HUNDREDTH - 1e-6) * HUNDREDTH;
        if (highest.getOrDefault(drain.outfall(), -Double.MAX_VALUE) < outfall - HUNDREDTH) {
            return Optional.empty();
        }
        Map<Integer, Double> levels = new HashMap<>();
        levels.put(drain.outfall(), outfall);
        List<Drain.Reach> order = drain.inOrder();
        for (int i = order.size() - 1; i >= 0; i--) {
            Section section = sections.get(order.get(i));
            if (section == null || !lay(section, highest, levels)) {
                return Optional.empty();
            }
        }
        return Optional.of(levels);
    }

    private static boolean lay(Section section, Map<Integer, Double> highest, Map<Integer, Double> levels) {
        Drain.Reach reach = section.reach();
        double length = reach.length();
        double down = levels.getOrDefault(reach.down(), 0.0);
        double least = down + section.heights().leastSlope() * length;
        double up = Math.min(highest.getOrDefault(reach.up(), 0.0), down + section.greatest() * length);
        for (Cap cap : section.caps()) {
            double left = length - cap.station();
            if (left > 1e-9) {
                up = Math.min(up, down + (cap.level() - down) * length / left);
            }
        }
        double rounded = Math.floor(up / HUNDREDTH + 1e-6) * HUNDREDTH;
        levels.put(reach.up(), rounded >= least - 1e-9 ? rounded : up);
        return up >= least - 1e-9;
    }

    /** How high each place can be. */
    private static Map<Integer, Double> fromAbove(Drain drain, Map<Drain.Reach, Section> sections) {
        Map<Integer, Double> highest = new HashMap<>();
        for (Drain.Reach reach : drain.inOrder()) {
            Section section = sections.get(reach);
            if (section != null) {
                double at = Math.min(
                        section.caps().get(0).level(),
                        drain.places()
                                .get(reach.up())
                                .inlet()
                                .flatMap(inlet -> section.heights()
                                        .atInlet(drain.places().get(reach.up()).place()))
                                .orElse(Double.MAX_VALUE));
                double start = highest.merge(reach.up(), at, Math::min);
                highest.merge(reach.down(), atEnd(section, start), Math::min);
            }
        }
        return highest;
    }

    private static double atEnd(Section section, double start) {
        double slope = section.heights().leastSlope();
        double length = section.reach().length();
        double end = start - slope * length;
        for (Cap cap : section.caps()) {
            end = Math.min(end, cap.level() - slope * (length - cap.station()));
        }
        return end;
    }
}
