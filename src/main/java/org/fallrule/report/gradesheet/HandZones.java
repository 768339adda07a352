package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.Condition;
import org.fallrule.check.Selection;
import org.fallrule.check.utility.HandDig;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Length;
import org.fallrule.measure.Written;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.report.SheetUnits;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * How near to a utility the trench is dug by hand: as the hand_dig rules of a book say, or one distance given in their place.
 * Where more than one rule may speak of a utility, the widest zone counts.
 */
public final class HandZones {
    private static final String ASK = " The state sets that distance; ask before you dig.";

    private final List<Zone> zones;

    private HandZones(List<Zone> zones) {
        this.zones = zones;
    }

    /** A distance from the outside edge of some utilities; a size to count where the plan gives none; who says so. */
    private record Zone(Selection of, Length width, Optional<Length> sizeIfUnknown, String saidBy) {}

    public static HandZones of(RuleBook book) {
        List<Zone> zones = new ArrayList<>();
        for (Rule rule : book.rules()) {
            if (rule.check() instanceof HandDig) {
                zones.add(new Zone(
                        rule.terms().get(HandDig.FROM),
                        new Length(rule.terms().get(HandDig.ZONE).si()),
                        Optional.of(new Length(rule.terms().get(HandDig.SIZE).si())),
                        "by rule " + rule.id() + " in " + rule.setBy().fileAndLine() + " ("
                                + rule.basis().spoken() + ")"));
            }
        }
        return new HandZones(List.copyOf(zones));
    }

    /** One distance for every utility, whatever a book says. */
    public static HandZones given(Written distance) {
        return new HandZones(List.of(new Zone(
                new Selection(Role.UTILITY, Condition.ALWAYS),
                new Length(distance.quantity().si()),
                Optional.empty(),
                "as given with the command in place of a rule book")));
    }

    /** From a utility's centreline to the edge of its zone; nothing where no rule speaks of it. */
    Optional<Length> reachFrom(Feature utility) {
        return zones.stream()
                .filter(zone -> zone.of().chooses(utility) != Truth.FALSE)
                .map(zone -> OutsideDiameter.of(utility)
                        .map(OutsideDiameter::value)
                        .or(zone::sizeIfUnknown)
                        .map(size -> zone.width().plus(size.times(0.5)))
                        .orElse(zone.width()))
                .max(Comparator.naturalOrder());
    }

    /** What is counted for a utility whose size the plan does not give; nothing where it does. */
    Optional<String> instead(Feature utility, SheetUnits units) {
        if (OutsideDiameter.of(utility).isPresent() || reachFrom(utility).isEmpty()) {
            return Optional.empty();
        }
        String counted = zones.stream()
                .filter(zone -> zone.of().chooses(utility) != Truth.FALSE)
                .flatMap(zone -> zone.sizeIfUnknown().stream())
                .max(Comparator.naturalOrder())
                .map(size -> "by hand is told for " + units.size(size) + ", as the rule has it.")
                .orElse("by hand is told from its centreline.");
        return Optional.of("Size of " + utility.spoken() + " is not given: " + counted);
    }

    /** The distances and where they come from, a sentence each. */
    List<String> spoken(SheetUnits units) {
        if (zones.isEmpty()) {
            return List.of("By hand: no rule of the book is a hand_dig, so no digging by hand is flagged here." + ASK);
        }
        return zones.stream()
                .map(zone -> "By hand: within " + units.depth(zone.width()) + " of the outside edge of a "
                        + zone.of().spoken() + " on the plan, " + zone.saidBy() + "." + ASK)
                .toList();
    }
}
