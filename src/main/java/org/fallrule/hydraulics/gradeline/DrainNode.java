package org.fallrule.hydraulics.gradeline;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;

/**
 * A place where pipes meet or end: an inlet, a junction or an outfall.
 *
 * @param id its name in results
 * @param rim level at which water would leave it upward; empty when not known
 * @param inflow what enters here from above, zero or more
 */
public record DrainNode(String id, Optional<Elevation> rim, Flow inflow) {

    public DrainNode {
        if (inflow.cubicMetresPerSecond() < 0) {
            throw new IllegalArgumentException("node " + id + ": a flow must not be below zero");
        }
    }
}
