package org.fallrule.hydraulics.gradeline;

import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Velocity;

/** The grade line of one pipe with water flowing in it, from the level in the node downstream to that in the node upstream. */
final class PipeGradeLine {
    private final Reach reach;
    private final double levelDownM;
    private final double endM;
    private final double depthUpM;

    PipeGradeLine(DrainPipe drain, Flow flow, double levelDownM) {
        this.reach = new Reach(drain, flow);
        this.levelDownM = Math.max(levelDownM, reach.invertDownM);
        this.endM = PipeEnd.depth(reach, this.levelDownM);
        this.depthUpM = depthUp();
    }

    /** Level in metres of the water in the node upstream. */
    double levelUpM() {
        LocalLosses losses = reach.drain.losses();
        return energyUpM() + (losses.bend() + losses.entrance()) * reach.velocityHeadAt(depthUpM);
    }

    PipeGrade grade() {
        double depthDown = leavesRapid() ? WaterSurface.normalDepth(reach) : endM;
        double down = Math.max(reach.invertDownM + depthDown, leavesRapid() ? levelDownM : Double.NEGATIVE_INFINITY);
        return new PipeGrade(
                reach.drain.id(),
                new Flow(reach.flowCms),
                state(),
                new Elevation(down),
                new Elevation(reach.invertAt(reach.lengthM) + depthUpM),
                new Length(depthDown),
                new Length(depthUpM),
                new Velocity(reach.velocityAt(depthDown)),
                new Velocity(reach.velocityAt(depthUpM)),
                losses());
    }

    private double depthUp() {
        if (reach.overfull()) {
            return endM + (reach.fullFrictionSlope() - reach.slope) * reach.lengthM;
        }
        double station = 0;
        double depth = endM;
        if (endM >= reach.diameterM) {
            double closing = reach.slope - reach.fullFrictionSlope();
            boolean staysFull = closing * reach.lengthM <= endM - reach.diameterM;
            if (staysFull) {
                return endM - closing * reach.lengthM;
            }
            station = (endM - reach.diameterM) / closing;
            depth = reach.diameterM;
        }
        return WaterSurface.depthAtUpperEnd(reach, depth, station);
    }

    private boolean steep() {
        return reach.slope > 0 && !reach.overfull() && WaterSurface.normalDepth(reach) <= reach.criticalM;
    }

    /** Whether a rapid flow reaches the lower end: the water there does not stand above critical depth. */
    private boolean leavesRapid() {
        return endM <= reach.criticalM && steep();
    }

    private PipeState state() {
        boolean fullDown = endM >= reach.diameterM || reach.overfull();
        boolean fullUp = depthUpM >= reach.diameterM || reach.overfull();
        if (fullDown && fullUp) {
            return PipeState.FULL;
        }
        if (fullDown || fullUp) {
            return PipeState.PARTLY_FULL;
        }
        return depthUpM <= reach.criticalM && steep() ? PipeState.RAPID : PipeState.TRANQUIL;
    }

    private PipeGrade.Losses losses() {
        double energyDown = reach.invertDownM + reach.energyAt(endM);
        double headUp = reach.velocityHeadAt(depthUpM);
        LocalLosses losses = reach.drain.losses();
        return new PipeGrade.Losses(
                new Length(energyDown - Math.max(levelDownM, reach.invertDownM + endM)),
                new Length(energyUpM() - energyDown),
                new Length(losses.bend() * headUp),
                new Length(losses.entrance() * headUp));
    }

    private double energyUpM() {
        return reach.invertAt(reach.lengthM) + reach.energyAt(depthUpM);
    }
}
