package org.fallrule.remedy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.fallrule.check.Check;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * What of a plan a change touches, and so which rules may find something else.
 *
 * @param isGround whether the proposed ground is another
 * @param isPlan whether anything of the drain lies elsewhere in plan, or is there that was not
 * @param attributes what else differs; the heights of a line count as inverts
 */
@SuppressWarnings("ReferenceEquality") // geometries that compare equal may differ in height
record Touched(boolean isGround, boolean isPlan, Set<Attribute<?>> attributes) {
    private static final Set<Attribute<?>> HEIGHTS = Set.of(
            Attribute.INVERT_UP,
            Attribute.INVERT_DOWN,
            Attribute.DEPTH_UP,
            Attribute.DEPTH_DOWN,
            Attribute.INVERT,
            Attribute.RIM);

    Touched {
        attributes = Set.copyOf(attributes);
    }

    /** What differs between a plan and one that was made from it by changes of its drain and its proposed ground. */
    static Touched between(Site before, Site after) {
        boolean isGround = before.layer(Role.PROPOSED_GROUND) != after.layer(Role.PROPOSED_GROUND);
        Set<Attribute<?>> attributes = new HashSet<>();
        for (Role role : Role.ofDrain()) {
            List<Feature> were = before.features(role);
            List<Feature> are = after.features(role);
            if (were.size() != are.size()) {
                return new Touched(isGround, true, Set.of());
            }
            for (int i = 0; i < were.size(); i++) {
                if (!liesAsBefore(were.get(i), are.get(i))) {
                    return new Touched(isGround, true, Set.of());
                }
                attributes.addAll(differing(were.get(i), are.get(i)));
            }
        }
        return new Touched(isGround, false, attributes);
    }

    private static boolean liesAsBefore(Feature before, Feature after) {
        return before == after
                || (before.id().equals(after.id()) && before.geometry().equalsExact(after.geometry()));
    }

    private static Set<Attribute<?>> differing(Feature before, Feature after) {
        if (before == after) {
            return Set.of();
        }
        Map<Attribute<?>, Object> was = before.attributes().asMap();
        Map<Attribute<?>, Object> is = after.attributes().asMap();
        Set<Attribute<?>> differing = new HashSet<>(was.keySet());
        differing.addAll(is.keySet());
        differing.removeIf(attribute -> Objects.equals(was.get(attribute), is.get(attribute)));
        if (before.geometry() != after.geometry()) {
            differing.add(Attribute.INVERT_UP);
        }
        return differing;
    }

    /** Whether a rule may find something else once that is changed. */
    boolean mayTouch(Rule rule) {
        return (isGround && rule.check().looksAtGround()) || (rule.check().looksAtDrain() && ofDrain(rule));
    }

    private boolean ofDrain(Rule rule) {
        return isPlan
                || rule.terms().read(attributes)
                || attributes.stream().anyMatch(attribute -> looksAt(rule.check(), attribute));
    }

    private static boolean looksAt(Check check, Attribute<?> attribute) {
        if (HEIGHTS.contains(attribute)) {
            return check.looksAtHeights();
        }
        return !Check.DETAILS.contains(attribute) || check.looksAtDetails().contains(attribute);
    }
}
