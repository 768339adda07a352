package org.fallrule.locality;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.fallrule.document.Fault;

/** Refuses tables in which a rarer storm rains less than a commoner one: a column or a heading has been mistaken. */
final class RarerRainsHarder {
    private final List<Fault> faults;

    RarerRainsHarder(List<Fault> faults) {
        this.faults = faults;
    }

    void check(SortedMap<ReturnPeriod, Stated<Rainfall>> rainfall) {
        List<Map.Entry<ReturnPeriod, Stated<Rainfall>>> commonestFirst = List.copyOf(rainfall.entrySet());
        for (int i = 1; i < commonestFirst.size(); i++) {
            compare(commonestFirst.get(i - 1), commonestFirst.get(i));
        }
    }

    private void compare(
            Map.Entry<ReturnPeriod, Stated<Rainfall>> commoner, Map.Entry<ReturnPeriod, Stated<Rainfall>> rarer) {
        if (commoner.getValue().value() instanceof IntensityTable below
                && rarer.getValue().value() instanceof IntensityTable above
                && rainsLess(below, above)) {
            faults.add(new Fault(
                    rarer.getValue().setBy(),
                    "the rain of " + rarer.getKey() + " is weaker than that of " + commoner.getKey()
                            + " of the same duration; check the two"));
        }
    }

    private static boolean rainsLess(IntensityTable commoner, IntensityTable rarer) {
        return commoner.rows().stream()
                .anyMatch(row -> rarer.rows().stream()
                        .anyMatch(other -> other.duration().equals(row.duration())
                                && other.intensity().metresPerSecond()
                                        < row.intensity().metresPerSecond()));
    }
}
