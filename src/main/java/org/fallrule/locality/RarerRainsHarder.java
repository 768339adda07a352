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
            compare(commonestFirst.subList(0, i), commonestFirst.get(i));
        }
    }

    /** Of several commoner storms that rain harder the rarest is named. */
    private void compare(
            List<Map.Entry<ReturnPeriod, Stated<Rainfall>>> commoner, Map.Entry<ReturnPeriod, Stated<Rainfall>> rarer) {
        commoner.stream()
                .filter(each ->
                        rainsLess(each.getValue().value(), rarer.getValue().value()))
                .reduce((one, next) -> next)
                .ifPresent(each -> faults.add(new Fault(
                        rarer.getValue().setBy(),
                        "the rain of " + rarer.getKey() + " is weaker than that of " + each.getKey()
                                + " of the same duration; check the two")));
    }

    private static boolean rainsLess(Rainfall commoner, Rainfall rarer) {
        return commoner instanceof IntensityTable below
                && rarer instanceof IntensityTable above
                && rainsLess(below, above);
    }

    private static boolean rainsLess(IntensityTable commoner, IntensityTable rarer) {
        return commoner.rows().stream()
                .anyMatch(row -> rarer.rows().stream()
                        .anyMatch(other -> other.duration().equals(row.duration())
                                && other.intensity().metresPerSecond()
                                        < row.intensity().metresPerSecond()));
    }
}
