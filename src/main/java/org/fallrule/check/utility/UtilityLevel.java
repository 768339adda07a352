package org.fallrule.check.utility;

import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.finding.Missing;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;

/**
 * How high a utility lies at a place.
 *
 * @param top its outside top
 * @param bottom its outside bottom
 */
record UtilityLevel(Elevation top, Elevation bottom) {

    /** From the utility's top elevation, else from the ground there less its depth. */
    static Optional<UtilityLevel> at(SiteAnalysis analysis, Feature utility, Coordinate place, Length sizeIfUnknown) {
        Length size = OutsideDiameter.of(utility).map(OutsideDiameter::value).orElse(sizeIfUnknown);
        return UtilityCrossing.topAt(analysis, utility, place).map(top -> new UtilityLevel(top, top.minus(size)));
    }

    /** What is missing where {@link #at} has no answer. */
    static Missing missing(Feature utility) {
        if (utility.get(Attribute.DEPTH).isPresent()) {
            return new Missing("ground above " + utility.spoken(), "take spot elevations around the crossing");
        }
        return new Missing("depth of " + utility.spoken(), "dig a test hole at the crossing");
    }

    /** The clear height between this utility and a pipe at the same place, outside to outside; negative when they overlap. */
    Length gapTo(Elevation pipeTop, Elevation pipeBottom) {
        Length over = pipeBottom.above(top);
        Length under = bottom.above(pipeTop);
        return over.compareTo(under) >= 0 ? over : under;
    }
}
