package org.fallrule.check.water;

import java.util.List;
import java.util.function.BiFunction;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Limits;
import org.fallrule.finding.Observation;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Looks at every inlet that has a grate and a box: all but downspouts. */
final class EachBasin {
    private EachBasin() {}

    /** What {@code held} makes of each under the limit for it; nothing of those that no limit is asked of. */
    static List<Observation> against(
            Limits limits, SiteAnalysis analysis, BiFunction<Feature, Limits.Answer.Asked, Observation> held) {
        return analysis.site().features(Role.INLET).stream()
                .filter(analysis.asked())
                .filter(inlet -> !inlet.get(Attribute.KIND).orElse("").equals("downspout"))
                .flatMap(inlet -> limits.hold(inlet, inlet.attributes(), asked -> held.apply(inlet, asked)).stream())
                .toList();
    }
}
