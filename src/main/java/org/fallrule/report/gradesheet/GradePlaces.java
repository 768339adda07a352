package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The stations of a pipe that get a row, in metres, each with what is there. */
final class GradePlaces {
    private final TreeMap<Double, List<String>> places = new TreeMap<>();
    private final SheetUnits units;
    private final PipeRun run;
    private final double length;

    GradePlaces(PipeRun run, Length every, SheetUnits units) {
        this.units = units;
        this.run = run;
        this.length = run.axis().getLength();
        add(0, structures(run.up()));
        add(length, structures(run.down()));
        bends();
        for (long i = 1; i * every.metres() < length; i++) {
            at(i * every.metres());
        }
    }

    Map<Double, List<String>> all() {
        return places;
    }

    private void bends() {
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        for (int i = 1; i < run.axis().getNumPoints() - 1; i++) {
            add(line.project(run.axis().getCoordinateN(i)), "bend");
        }
    }

    void crossings(List<UtilityCrossing> crossings) {
        for (UtilityCrossing crossing : crossings) {
            add(crossing.station(), "crosses " + crossing.utility().spoken() + depth(crossing.utility()));
        }
    }

    private String depth(Feature utility) {
        return utility.get(Attribute.DEPTH)
                .map(depth -> ", said to lie " + units.depth(depth) + " deep")
                .orElse(utility.get(Attribute.TOP).isPresent() ? "" : ", depth not known");
    }

    void byHand(List<HandReach> reaches) {
        for (HandReach reach : reaches) {
            add(reach.from(), "by hand from here: " + reach.utility().spoken());
            add(reach.to(), "by hand to here: " + reach.utility().spoken());
        }
    }

    private static String structures(Junction junction) {
        return junction.structures().isEmpty()
                ? "joint"
                : junction.structures().stream().map(Feature::spoken).collect(Collectors.joining(", "));
    }

    private void add(double station, String what) {
        at(station).add(what);
    }

    /** The place at a station, which one nearer than the tolerance already stands for. */
    private List<String> at(double station) {
        double near = Dimension.LENGTH.tolerance();
        Map.Entry<Double, List<String>> known =
                places.subMap(station - near, true, station + near, true).firstEntry();
        if (known != null) {
            return known.getValue();
        }
        return places.computeIfAbsent(Math.max(0, Math.min(length, station)), any -> new ArrayList<>());
    }
}
