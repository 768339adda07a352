package org.fallrule.rulebook;

import java.util.List;
import java.util.Optional;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Limit;

/** Holds a house book to its bound: it may tighten what the county asks, and loosen only where it says why. */
final class HouseGuard {
    private final List<Fault> faults;

    HouseGuard(List<Fault> faults) {
        this.faults = faults;
    }

    /** Compares a rule before and after the house book was laid over it. */
    void compare(Rule county, Rule house) {
        if (house.weight().compareTo(county.weight()) > 0) {
            refuse(
                    house.id(),
                    house.setBy(),
                    "weighs less than the county's " + county.weight().word());
        }
        if (house.check() != county.check()) {
            refuse(house.id(), house.setBy(), "uses another check than the county's");
            return;
        }
        for (Parameter<?> parameter : county.check().parameters()) {
            compare(parameter, county, house);
        }
    }

    void dropped(String id, Place place) {
        refuse(id, place, "is dropped");
    }

    private void compare(Parameter<?> parameter, Rule county, Rule house) {
        Optional<?> before = county.terms().find(parameter);
        Optional<?> after = house.terms().find(parameter);
        if (before.isPresent()
                && before.get() instanceof Limits asked
                && after.isPresent()
                && after.get() instanceof Limits now) {
            compareLimits(house.id(), parameter.name(), asked, now);
        } else if (before.isPresent() && !before.equals(after)) {
            refuse(house.id(), house.setBy(), "changes " + parameter.name() + ", which may loosen it");
        }
    }

    private void compareLimits(String id, String name, Limits county, Limits house) {
        for (Limits.Case mine : house.cases()) {
            List<Limits.Case> theirs = counterparts(mine, county, house);
            if (theirs.isEmpty()) {
                refuse(id, mine.setBy(), name + ": has a condition that the county's limit has not");
            }
            theirs.stream()
                    .filter(asked -> !tightEnough(mine.limit(), asked.limit()))
                    .forEach(asked -> refuse(
                            id,
                            mine.setBy(),
                            name + ": " + spoken(mine.limit()) + " is looser than " + spoken(asked.limit()) + " in "
                                    + asked.setBy().fileAndLine()));
        }
        boolean severalEach = county.cases().size() > 1 && house.cases().size() > 1;
        if (severalEach && county.cases().size() != house.cases().size()) {
            refuse(id, house.cases().get(0).setBy(), name + ": leaves out conditions that the county's limit has");
        }
    }

    /** What the county asks where the house book's case speaks: the same condition, or all where either has but one. */
    private static List<Limits.Case> counterparts(Limits.Case mine, Limits county, Limits house) {
        if (house.cases().size() == 1 || county.cases().size() == 1) {
            return county.cases();
        }
        return county.cases().stream()
                .filter(asked -> asked.when().text().equals(mine.when().text()))
                .toList();
    }

    private static boolean tightEnough(Optional<Limit> house, Optional<Limit> county) {
        return county.isEmpty() || (house.isPresent() && house.get().atLeastAsTightAs(county.get()));
    }

    private static String spoken(Optional<Limit> limit) {
        return limit.map(each -> each.value().text()).orElse("none");
    }

    private void refuse(String id, Place place, String why) {
        faults.add(new Fault(
                place, "rule " + id + " " + why + "; a house book may only tighten, or say loosen_because: \"…\""));
    }
}
