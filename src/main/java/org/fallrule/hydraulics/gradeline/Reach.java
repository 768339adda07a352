package org.fallrule.hydraulics.gradeline;

import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.hydraulics.pipe.CircularSection;
import org.fallrule.hydraulics.pipe.CriticalDepth;
import org.fallrule.measure.Flow;

/** A pipe with a flow above zero in it, in SI numbers for the solvers of this package. */
final class Reach {
    final DrainPipe drain;
    final double flowCms;
    final double diameterM;
    final double lengthM;
    final double invertDownM;
    final double slope;
    final double fullCms;
    final double criticalM;

    Reach(DrainPipe drain, Flow flow) {
        this.drain = drain;
        this.flowCms = flow.cubicMetresPerSecond();
        this.diameterM = drain.pipe().bore().metres();
        this.lengthM = drain.length().metres();
        this.invertDownM = drain.invertDown().metres();
        this.slope = drain.slope().ratio();
        this.fullCms = slope > 0 ? drain.pipe().conveyanceCms() * Math.sqrt(slope) : 0;
        this.criticalM = CriticalDepth.metres(diameterM, flowCms);
    }

    /** Whether the pipe falls, yet less than friction asks of the flow when it runs full. */
    boolean overfull() {
        return slope > 0 && flowCms > fullCms;
    }

    CircularSection section(double depthM) {
        return new CircularSection(diameterM, Math.min(depthM, diameterM));
    }

    double velocityAt(double depthM) {
        return section(depthM).velocityMps(flowCms);
    }

    double velocityHeadAt(double depthM) {
        return Water.velocityHead(velocityAt(depthM));
    }

    /** Depth, or pressure head where that is above the crown, and velocity head. */
    double energyAt(double depthM) {
        return depthM + velocityHeadAt(depthM);
    }

    double frictionSlopeAt(double depthM) {
        return section(depthM).frictionSlope(flowCms, drain.pipe().roughness());
    }

    double fullFrictionSlope() {
        return frictionSlopeAt(diameterM);
    }

    /** The invert's elevation so many metres up from the lower end. */
    double invertAt(double stationM) {
        return invertDownM + slope * stationM;
    }
}
