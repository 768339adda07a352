package org.fallrule.analysis;

import java.util.Comparator;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * The size to count for a pipe or utility of which the plan gives no diameter: that of the widest of its role on the plan. Who
 * drew the plan knew such sizes; where even so wide a pipe would be far enough away, its own size does not matter.
 *
 * @param plan the plan
 * @param of the feature without a diameter
 * @param size the outside diameter of the widest
 */
public record WidestOfPlan(Site plan, Feature of, Length size) {

    /** Nothing for what has no diameter or has one given, and where the plan gives none at all. */
    public static Optional<WidestOfPlan> standingFor(Feature feature, Site site) {
        boolean isPipe = feature.role() == Role.PIPE || feature.role() == Role.UTILITY;
        if (!isPipe || OutsideDiameter.of(feature).isPresent()) {
            return Optional.empty();
        }
        return site.features(feature.role()).stream()
                .flatMap(other -> OutsideDiameter.of(other).stream())
                .map(OutsideDiameter::value)
                .max(Comparator.naturalOrder())
                .map(size -> new WidestOfPlan(site, feature, size));
    }

    public Length half() {
        return size.times(0.5);
    }

    /** {@code diameter of pipe P-1 is not given; counted as wide as the widest pipe of the plan, 6.28 in}. */
    public String spoken() {
        return "diameter of " + of.spoken() + " is not given; counted as wide as the widest "
                + of.role().spoken() + " of the plan, " + plan.printed(size, Unit.INCH);
    }
}
