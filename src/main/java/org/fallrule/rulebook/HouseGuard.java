package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.Condition;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.locality.MarkAccuracy;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Written;

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
        if (!house.check().name().equals(county.check().name())) {
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

    /**
     * To take marks as better known than the county does is to loosen every rule that looks at them. Where the county says nothing
     * of a quality, its marks are taken as exact in plan and their depths are relied on: any figure is worse.
     */
    void compare(MarkAccuracy county, MarkAccuracy house) {
        house.byQuality()
                .forEach((quality, mine) -> Optional.ofNullable(
                                county.byQuality().get(quality))
                        .filter(theirs -> isBetter(mine.horizontal(), theirs.horizontal())
                                || isBetter(mine.vertical(), theirs.vertical()))
                        .ifPresent(theirs -> faults.add(new Fault(
                                mine.statedAt(),
                                "mark_accuracy: a mark of quality " + quality + " is taken as better known than in "
                                        + theirs.statedAt().fileAndLine()
                                        + "; a house book may only take it as worse"))));
    }

    /** To let the work lie farther from its design than the county does is to loosen. */
    void compare(AsBuiltTolerances county, AsBuiltTolerances house) {
        house.byMeasure()
                .forEach((measure, mine) -> county.of(measure)
                        .filter(theirs -> !mine.atLeastAsTightAs(theirs))
                        .ifPresent(theirs -> faults.add(new Fault(
                                mine.setBy(),
                                "as_built: " + measure.word() + " of "
                                        + mine.within().text() + " ("
                                        + mine.weight().word() + ") is looser than "
                                        + theirs.within().text() + " ("
                                        + theirs.weight().word() + ") in "
                                        + theirs.setBy().fileAndLine() + "; a house book may only tighten"))));
    }

    /** Without a figure no depth is relied on; in plan there always is one. */
    private static boolean isBetter(Optional<Written> mine, Optional<Written> theirs) {
        return mine.isPresent()
                && (theirs.isEmpty()
                        || mine.get().quantity().si() < theirs.get().quantity().si());
    }

    private void compare(Parameter<?> parameter, Rule county, Rule house) {
        Optional<?> before = county.terms().find(parameter);
        Optional<?> after = house.terms().find(parameter);
        if (before.isPresent()
                && before.get() instanceof Limits asked
                && after.isPresent()
                && after.get() instanceof Limits now) {
            compareLimits(house.id(), parameter.name(), asked, now);
        } else if (!before.equals(after) && !addsLimit(parameter, before)) {
            refuse(house.id(), house.setBy(), "changes " + parameter.name() + ", which may loosen it");
        }
    }

    private static boolean addsLimit(Parameter<?> parameter, Optional<?> before) {
        return before.isEmpty() && !parameter.asksLess() && parameter.form() instanceof Parameter.Form.LimitOf;
    }

    /**
     * Of both lists the first case whose condition holds counts. So each case of the house book must be as tight as each of
     * the county's that can count together with it.
     */
    private void compareLimits(String id, String name, Limits county, Limits house) {
        List<Limits.Case> asked = reachable(county);
        List<Limits.Case> now = reachable(house);
        for (int i = 0; i < now.size(); i++) {
            for (int j = 0; j < asked.size(); j++) {
                Limits.Case mine = now.get(i);
                Limits.Case theirs = asked.get(j);
                boolean together =
                        !stands(theirs.when(), now.subList(0, i)) && !stands(mine.when(), asked.subList(0, j));
                if (together && !tightEnough(mine.limit(), theirs.limit())) {
                    refuse(
                            id,
                            mine.setBy(),
                            name + ": " + spoken(mine) + " is looser than " + spoken(theirs) + " in "
                                    + theirs.setBy().fileAndLine());
                }
            }
        }
    }

    /** The cases up to the first that always holds; where none does, nothing is asked of the rest. */
    private static List<Limits.Case> reachable(Limits limits) {
        List<Limits.Case> cases = new ArrayList<>();
        for (Limits.Case each : limits.cases()) {
            cases.add(each);
            if (each.when().isAlways()) {
                return cases;
            }
        }
        Place last = cases.get(cases.size() - 1).setBy();
        cases.add(new Limits.Case(Condition.ALWAYS, Optional.empty(), last));
        return cases;
    }

    private static boolean stands(Condition condition, List<Limits.Case> earlier) {
        return earlier.stream().anyMatch(each -> each.when().filter().equals(condition.filter()));
    }

    private static boolean tightEnough(Optional<Limit> house, Optional<Limit> county) {
        return county.isEmpty() || (house.isPresent() && house.get().atLeastAsTightAs(county.get()));
    }

    private static String spoken(Limits.Case each) {
        String limit = each.limit().map(asked -> asked.value().text()).orElse("none");
        return each.when().isAlways() ? limit : limit + " when " + each.when().text();
    }

    private void refuse(String id, Place place, String why) {
        faults.add(new Fault(
                place, "rule " + id + " " + why + "; a house book may only tighten, or say loosen_because: \"…\""));
    }
}
