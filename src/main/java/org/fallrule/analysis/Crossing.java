package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.site.Feature;
import org.fallrule.terrain.Stationing;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Where a pipe's centreline crosses a utility's in plan.
 *
 * @param station metres from the pipe's upstream end
 * @param place where, in plan
 * @param along whether the two share a stretch there, of which this is an end
 */
public record Crossing(double station, Coordinate place, boolean along) {

    /** Meetings nearer to each other along the pipe than this, in metres, are one. */
    private static final double APART = 1e-6;

    /** The crossings of a run and a utility in the order of their stations; a shared stretch counts at its ends. */
    public static List<Crossing> of(PipeRun run, Feature utility) {
        if (!run.axis().getEnvelopeInternal().intersects(utility.geometry().getEnvelopeInternal())) {
            return List.of();
        }
        Stationing stationing = new Stationing(run.axis());
        List<Double> stations = new ArrayList<>();
        for (Object line : LinearComponentExtracter.getLines(utility.geometry())) {
            stations.addAll(stationing.where(((LineString) line).getCoordinates()));
        }
        if (stations.isEmpty()) {
            return List.of();
        }
        stations.sort(Comparator.naturalOrder());
        // A shared stretch has two ends; most pipes and utilities cross once, and finding what they share costs much.
        boolean once = stations.get(stations.size() - 1) - stations.get(0) <= APART;
        Geometry shared =
                once ? run.axis().getFactory().createLineString() : run.axis().intersection(utility.geometry());
        LengthIndexedLine axis = new LengthIndexedLine(run.axis());
        List<Crossing> crossings = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double station : stations) {
            if (station - last > APART) {
                Coordinate place = axis.extractPoint(station);
                crossings.add(new Crossing(station, place, liesAlong(shared, place)));
                last = station;
            }
        }
        return crossings;
    }

    private static boolean liesAlong(Geometry shared, Coordinate place) {
        return shared.getLength() > 0
                && LinearComponentExtracter.getGeometry(shared)
                        .isWithinDistance(shared.getFactory().createPoint(place), APART);
    }

    /** The parts of a run farther in plan than {@code excused} metres from every crossing; empty when none is left. To lie along is not to cross. */
    public static Geometry apartFrom(List<Crossing> crossings, PipeRun run, double excused) {
        List<Reach> near = new ArrayList<>();
        for (Crossing crossing : crossings.stream().filter(each -> !each.along).toList()) {
            near.addAll(within(run, crossing.place(), excused));
        }
        near.sort(Comparator.comparingDouble(Reach::from));
        LengthIndexedLine axis = new LengthIndexedLine(run.axis());
        List<LineString> apart = new ArrayList<>();
        double from = 0;
        for (Reach reach : Reach.joined(near)) {
            add(axis, from, reach.from(), apart);
            from = reach.to();
        }
        add(axis, from, run.axis().getLength(), apart);
        return run.axis().getFactory().createMultiLineString(apart.toArray(new LineString[0]));
    }

    private static void add(LengthIndexedLine axis, double from, double to, List<LineString> parts) {
        if (to - from > APART) {
            parts.add((LineString) axis.extractLine(from, to));
        }
    }

    /** The reaches of a run no farther than so many metres from a place: each straight piece cut with the circle around it. */
    private static List<Reach> within(PipeRun run, Coordinate place, double metres) {
        List<Reach> within = new ArrayList<>();
        double station = 0;
        for (int i = 1; i < run.axis().getNumPoints(); i++) {
            LineSegment piece =
                    new LineSegment(run.axis().getCoordinateN(i - 1), run.axis().getCoordinateN(i));
            double length = piece.getLength();
            double off = piece.distancePerpendicular(place);
            if (length > 0 && off <= metres) {
                double foot = piece.projectionFactor(place) * length;
                double half = Math.sqrt(metres * metres - off * off);
                double from = Math.max(0, foot - half);
                double to = Math.min(length, foot + half);
                if (from <= to) {
                    within.add(new Reach(station + from, station + to));
                }
            }
            station += length;
        }
        return within;
    }
}
