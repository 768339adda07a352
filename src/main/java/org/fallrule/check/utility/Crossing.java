package org.fallrule.check.utility;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Where a pipe's centreline crosses a utility's in plan.
 *
 * @param station metres from the pipe's upstream end
 * @param place where, in plan
 */
record Crossing(double station, Coordinate place) {

    /** Straight pieces to a quarter circle: within 0.2 % of its radius, and never outside of it. */
    private static final int ARC_SEGMENTS = 16;

    /** The crossings of a run and a utility in the order of their stations; a shared stretch counts at its ends. */
    static List<Crossing> of(PipeRun run, Feature utility) {
        LengthIndexedLine stations = new LengthIndexedLine(run.axis());
        List<Crossing> crossings = new ArrayList<>();
        for (Coordinate place : run.axis().intersection(utility.geometry()).getCoordinates()) {
            crossings.add(new Crossing(stations.project(place), place));
        }
        crossings.sort(java.util.Comparator.comparingDouble(Crossing::station));
        return crossings;
    }

    /** The parts of a run farther in plan than {@code excused} metres from every crossing; empty when none is left. */
    static Geometry apartFrom(List<Crossing> crossings, PipeRun run, double excused) {
        Geometry apart = run.axis();
        for (Crossing crossing : crossings) {
            Geometry near =
                    run.axis().getFactory().createPoint(crossing.place()).buffer(excused, ARC_SEGMENTS);
            apart = apart.difference(near);
        }
        return apart;
    }
}
