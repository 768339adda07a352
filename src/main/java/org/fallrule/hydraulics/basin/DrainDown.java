package org.fallrule.hydraulics.basin;

import org.fallrule.measure.Time;

/** How the water that is left in a sump goes away. */
public sealed interface DrainDown {

    /**
     * It drains.
     *
     * @param time until the sump is empty
     */
    record Empties(Time time) implements DrainDown {}

    /**
     * It stays until it dries up or is pumped.
     *
     * @param why what keeps it: no hole, or soil that takes no water
     */
    record HoldsWater(String why) implements DrainDown {}
}
