package org.fallrule.hydraulics.gradeline;

import org.fallrule.hydraulics.mechanics.Bracket;

/** How the water leaves the lower end of a pipe into the node there. */
final class PipeEnd {

    private PipeEnd() {}

    /**
     * Depth in metres at the lower end, pressure head where it is above the crown. The node's level fixes it once it is high
     * enough; below that the water falls out freely: at critical depth, or, where the flow fills the pipe, at the middle between
     * critical depth and crown.
     *
     * @param levelM level of the water in the node, at least the invert
     */
    static double depth(Reach reach, double levelM) {
        double standing = levelM - reach.invertDownM;
        double kept = 1 - reach.drain.losses().exit();
        double full = standing - kept * reach.velocityHeadAt(reach.diameterM);
        if (reach.overfull()) {
            return Math.max(full, (reach.criticalM + reach.diameterM) / 2);
        }
        if (full >= reach.diameterM) {
            return full;
        }
        double least = reach.criticalM + kept * reach.velocityHeadAt(reach.criticalM);
        if (standing <= least) {
            return reach.criticalM;
        }
        return Bracket.rootOfRising(
                y -> y + kept * reach.velocityHeadAt(y) - standing, reach.criticalM, reach.diameterM);
    }
}
