package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.fallrule.analysis.SurfaceAbove;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Ground raised beside a building, as a crew works to it: {@code raise the ground along 14.00 ft of the north side of building
 * B-1 by 0.31 ft at the wall, graded evenly to nothing 10.00 ft out: about 0.8 cu yd of fill}.
 *
 * @param feet where it is raised
 */
record WordsOfGrading(Situation at, Feature building, List<Foot> feet) {

    /**
     * The words.
     *
     * @param raised metres that the foot of a wall is raised by, of what it misses
     * @param rims what goes up with the ground
     */
    String of(DoubleUnaryOperator raised, Earthwork earth, String rims) {
        Map<String, Double> lengths = new LinkedHashMap<>();
        Map<String, Double> missed = new LinkedHashMap<>();
        for (Foot foot : feet) {
            lengths.merge(foot.sample().side(), foot.sample().wall(), Double::sum);
            missed.merge(foot.sample().side(), foot.missed(), Math::max);
        }
        List<String> sides = new ArrayList<>();
        lengths.forEach((side, length) -> {
            double by = raised.applyAsDouble(missed.getOrDefault(side, 0.0));
            if (by > 0) {
                sides.add(at.shown().plan(length) + " of its " + side + " side by "
                        + at.shown().height(by));
            }
        });
        return "raise the ground beside " + building.spoken() + " along " + joined(sides)
                + " at the wall, graded evenly"
                + " to nothing " + out() + " out: " + earth.spoken(at.shown().metric()) + hard() + rims
                + "; see that siding and sill stay as far above it as the code asks";
    }

    private static String joined(List<String> sides) {
        return String.join(", ", sides.subList(0, sides.size() - 1))
                + (sides.size() > 1 ? " and " : "")
                + sides.get(sides.size() - 1);
    }

    private String out() {
        double least = feet.stream().mapToDouble(Foot::reach).min().orElse(0);
        double most = feet.stream().mapToDouble(Foot::reach).max().orElse(0);
        String far = at.shown().plan(most);
        String near = at.shown().plan(least);
        return near.equals(far) ? far : near + " to " + far;
    }

    /** What is paved where the ground is raised has to be laid anew. */
    private String hard() {
        SurfaceAbove surfaces = at.analysis().surfaces();
        TreeSet<String> words = new TreeSet<>();
        for (Foot foot : feet) {
            Coordinate middle = new Envelope(foot.root(), foot.toe()).centre();
            surfaces.at(middle)
                    .filter(word -> !word.equals("lawn") && !word.equals("building"))
                    .ifPresent(words::add);
        }
        return words.isEmpty() ? "" : ", the " + String.join(" and the ", words) + " there laid anew on it";
    }
}
