package org.fallrule.hydraulics.gradeline;

import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.method.Answer;

/**
 * How high the water stands in a node.
 *
 * @param node its id
 * @param level the water's level; none when it is dry
 * @param freeboard how far the rim is above the water, below zero when the water would come out; none when it is dry or the rim
 *     is not known
 * @param surcharged whether the water stands above the crown of the pipe that leaves
 */
public record NodeLevel(String node, Answer<Elevation> level, Answer<Length> freeboard, boolean surcharged) {

    /** Whether the water stands above the rim; the levels upstream are then too high, as the water that comes out is counted on. */
    public boolean overflows() {
        return freeboard.value().filter(gap -> gap.metres() < 0).isPresent();
    }
}
