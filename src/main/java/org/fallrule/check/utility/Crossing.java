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

    /** The parts of a run farther along it than {@code excused} metres from every crossing; empty when none is left. */
    static Geometry apartFrom(List<Crossing> crossings, PipeRun run, double excused) {
        LengthIndexedLine stations = new LengthIndexedLine(run.axis());
        List<Geometry> parts = new ArrayList<>();
        double from = 0;
        for (Crossing crossing : crossings) {
            addPart(parts, stations, from, crossing.station() - excused);
            from = Math.max(from, crossing.station() + excused);
        }
        addPart(parts, stations, from, run.axis().getLength());
        return run.axis().getFactory().buildGeometry(parts);
    }

    private static void addPart(List<Geometry> parts, LengthIndexedLine stations, double from, double to) {
        if (to > from) {
            parts.add(stations.extractLine(from, to));
        }
    }
}
