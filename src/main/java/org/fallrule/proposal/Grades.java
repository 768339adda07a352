package org.fallrule.proposal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.measure.Length;

/**
 * The inverts of a drain.
 *
 * @param drain the drain
 * @param levels the invert at each of its places, metres
 * @param sizes the nominal diameter of each reach
 * @param slope the least slope of its pipes
 */
record Grades(Drain drain, Map<Integer, Double> levels, Map<Drain.Reach, Length> sizes, double slope) {

    Grades {
        levels = Map.copyOf(levels);
        sizes = Map.copyOf(sizes);
    }

    /**
     * The levels at which a branch may come in.
     *
     * @param level the drain's invert as it is
     * @param least how low it can be laid there at most, so that it still falls to the outfall
     * @param below metres of drain from there to the outfall, which lowering it lowers in part
     */
    record Range(double level, double least, double below) {}

    double level(Drain.Reach reach, double fromUp) {
        double up = levels.getOrDefault(reach.up(), 0.0);
        double down = levels.getOrDefault(reach.down(), 0.0);
        return up + (down - up) * fromUp / reach.length();
    }

    Range level(int place) {
        double below = toOutfall(place);
        return range(levels.getOrDefault(place, 0.0), below);
    }

    Range level(Joins.Join.On join) {
        double fromUp = 0;
        for (int i = 1; i < join.piece(); i++) {
            fromUp +=
                    join.reach().axis().get(i - 1).distance(join.reach().axis().get(i));
        }
        fromUp += join.reach().axis().get(join.piece() - 1).distance(join.place());
        double below = join.reach().length() - fromUp + toOutfall(join.reach().down());
        return range(level(join.reach(), fromUp), below);
    }

    private Range range(double level, double below) {
        return new Range(level, levels.getOrDefault(drain.outfall(), 0.0) + slope * below, below);
    }

    private double toOutfall(int place) {
        return drain.leaving(place)
                .map(reach -> reach.length() + toOutfall(reach.down()))
                .orElse(0.0);
    }

    /** The same with other sizes. */
    Grades with(Map<Drain.Reach, Length> other) {
        return new Grades(drain, levels, new HashMap<>(other), slope);
    }

    List<Drain.Reach> inOrder() {
        return drain.inOrder();
    }
}
