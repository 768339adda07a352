package org.fallrule.network;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;

/**
 * Some of a pipe's run between two stations.
 *
 * @param from station in metres where it begins
 * @param to station in metres where it ends
 */
public record Reach(double from, double to) {

    public Length length() {
        return new Length(to - from);
    }

    /** Reaches in the order of their stations, those that touch made into one. */
    public static List<Reach> joined(List<Reach> reaches) {
        List<Reach> joined = new ArrayList<>();
        for (Reach reach : reaches) {
            Reach last = joined.isEmpty() ? reach : joined.get(joined.size() - 1);
            if (!joined.isEmpty() && reach.from - last.to <= Dimension.LENGTH.tolerance()) {
                joined.set(joined.size() - 1, new Reach(last.from, Math.max(last.to, reach.to)));
            } else {
                joined.add(reach);
            }
        }
        return joined;
    }

    /** {@code 0+41.7 to 0+60.0}; {@code 12.71 m to 18.29 m}. */
    public String spoken(boolean metric) {
        return new Station(from, metric) + " to " + new Station(to, metric);
    }
}
