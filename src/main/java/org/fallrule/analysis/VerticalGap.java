package org.fallrule.analysis;

import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;

/**
 * The clear height between a pipe of the drain and a utility at the same place, outside to outside.
 *
 * @param over the pipe's bottom above the utility's top; negative where it is not
 * @param under the utility's bottom above the pipe's top; negative where it is not
 */
public record VerticalGap(Length over, Length under) {

    static VerticalGap between(Elevation pipeTop, Elevation pipeBottom, Elevation top, Length size) {
        return new VerticalGap(pipeBottom.above(top), top.minus(size).above(pipeTop));
    }

    /** Whether the drain lies over the utility; where the two overlap, whether it is nearer to that. */
    public boolean isDrainOver() {
        return over.compareTo(under) >= 0;
    }

    /** The clear height on whichever side it is; negative where the two overlap. */
    public Length clear() {
        return isDrainOver() ? over : under;
    }
}
