package org.fallrule.check.ground;

import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.site.Feature;

/** How the fall of the ground around a building stands under the terms of a {@link GroundFall} rule, place by place. */
public final class FallAround {
    private FallAround() {}

    /**
     * A place at a building's wall.
     *
     * @param isLeftOut whether it has too little ground of its own to tell
     * @param seen how it stands; nothing where it is left out, or no limit is asked of it
     */
    public record Beside(WallSample sample, boolean isLeftOut, Optional<Observation> seen) {}

    /** All along the building's walls, in the order in which they are drawn, but where another building stands against them. */
    public static List<Beside> of(SiteAnalysis analysis, Terms terms, Feature building) {
        double over = terms.get(GroundFall.OVER).si();
        double shortest = terms.find(GroundFall.SHORTEST).map(Quantity::si).orElse(0.0);
        double bank = terms.find(GroundFall.BANK).map(Quantity::si).orElse(0.0);
        double spacing = terms.get(GroundFall.SPACING).si();
        FallHeld held = new FallHeld(analysis, building, terms.get(GroundFall.FALL), over, bank);
        return WallSamples.around(building, analysis.site(), over, spacing).stream()
                .filter(sample -> !sample.isBuiltOn())
                .map(sample -> sample.length() < shortest - Dimension.LENGTH.tolerance()
                        ? new Beside(sample, true, Optional.empty())
                        : new Beside(sample, false, held.against(sample).map(FallHeld.Sampled::seen)))
                .toList();
    }
}
