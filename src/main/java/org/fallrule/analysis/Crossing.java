package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.terrain.Stationing;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
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

    /** Straight pieces to a quarter circle: within 0.01 % of its radius, and never outside of it. */
    private static final int ARC_SEGMENTS = 64;
    /** Meetings nearer to each other along the pipe than this, in metres, are one. */
    private static final double APART = 1e-6;

    /** The crossings of a run and a utility in the order of their stations; a shared stretch counts at its ends. */
    public static List<Crossing> of(PipeRun run, Feature utility) {
        Stationing stationing = new Stationing(run.axis());
        List<Double> stations = new ArrayList<>();
        for (Object line : LinearComponentExtracter.getLines(utility.geometry())) {
            stations.addAll(stationing.where(((LineString) line).getCoordinates()));
        }
        Geometry shared = run.axis().intersection(utility.geometry());
        LengthIndexedLine axis = new LengthIndexedLine(run.axis());
        List<Crossing> crossings = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (double station : stations.stream().sorted().toList()) {
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
        Geometry apart = run.axis();
        for (Crossing crossing : crossings.stream().filter(each -> !each.along).toList()) {
            Geometry near =
                    run.axis().getFactory().createPoint(crossing.place()).buffer(excused, ARC_SEGMENTS);
            apart = apart.difference(near);
        }
        return apart;
    }
}
