package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;

/** What has changed of one thing: its name, its place, what is said of it. */
final class FeatureChanges {
    private final FeaturePair pair;
    private final boolean asBuilt;
    private final Site plan;

    /** @param plan the later of the two, in whose units the changes are told */
    FeatureChanges(FeaturePair pair, boolean asBuilt, Site plan) {
        this.pair = pair;
        this.asBuilt = asBuilt;
        this.plan = plan;
    }

    List<DataChange> changes() {
        List<DataChange> changes = new ArrayList<>();
        Feature after = pair.after();
        if (pair.isRenamed()) {
            changes.add(DataChange.said(
                    DataChange.Kind.RENAMED,
                    after.spoken(),
                    Optional.of(after),
                    "",
                    Optional.of(pair.before().id()),
                    Optional.of(after.id())));
        }
        Moves.inPlan(pair.before().geometry(), after.geometry())
                .ifPresent(by -> changes.add(DataChange.moved(after, "in plan", by, plan)));
        if (!after.attributes().has(Attribute.ELEVATION)) {
            Moves.inHeight(pair.before().geometry(), after.geometry())
                    .ifPresent(by -> changes.add(DataChange.moved(after, "in height", by, plan)));
        }
        attributes().forEach(attribute -> said(attribute).ifPresent(changes::add));
        return changes;
    }

    private Set<Attribute<?>> attributes() {
        Set<Attribute<?>> all =
                new LinkedHashSet<>(pair.before().attributes().asMap().keySet());
        all.addAll(pair.after().attributes().asMap().keySet());
        all.remove(Attribute.ID);
        if (asBuilt) {
            all.remove(Attribute.STATUS);
        }
        return all;
    }

    private Optional<DataChange> said(Attribute<?> attribute) {
        Optional<Object> from = value(pair.before(), attribute);
        Optional<Object> to = value(pair.after(), attribute);
        boolean same = from.isPresent() && to.isPresent() && isSame(from.get(), to.get());
        if (same || from.equals(to)) {
            return Optional.empty();
        }
        return Optional.of(DataChange.said(
                DataChange.Kind.ATTRIBUTE,
                pair.after().spoken(),
                Optional.of(pair.after()),
                attribute.spoken(),
                from.map(this::shown),
                to.map(this::shown)));
    }

    private static Optional<Object> value(Feature feature, Attribute<?> attribute) {
        return Optional.ofNullable(feature.attributes().asMap().get(attribute));
    }

    private static boolean isSame(Object from, Object to) {
        if (from instanceof Quantity was && to instanceof Quantity is) {
            return Math.abs(was.si() - is.si()) <= was.dimension().tolerance();
        }
        return from.equals(to);
    }

    private String shown(Object value) {
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        return value instanceof Quantity quantity ? Printed.of(quantity, unit(quantity)) : value.toString();
    }

    private Unit unit(Quantity quantity) {
        if (quantity instanceof Length length
                && Math.abs(length.metres()) < Length.feet(2).metres()) {
            return plan.unit(Unit.INCH);
        }
        return plan.unit(Unit.usual(quantity.dimension()));
    }
}
