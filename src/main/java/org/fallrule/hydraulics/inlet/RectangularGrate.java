package org.fallrule.hydraulics.inlet;

import org.fallrule.measure.Area;
import org.fallrule.measure.Length;

/**
 * A rectangular grate from which the clogged part is taken: leaves gather from one side and leave a narrower grate.
 *
 * @param length of the edge that stays whole, along a curb or wall where there is one
 * @param width of the edge that clogging shortens
 * @param openPart open area over whole area, above 0 and at most 1
 * @param againstWall whether one long edge stands against a curb or wall, over which no water comes
 */
public record RectangularGrate(Length length, Length width, double openPart, boolean againstWall) {

    public RectangularGrate {
        if (!(length.metres() > 0 && width.metres() > 0 && openPart > 0 && openPart <= 1)) {
            throw new IllegalArgumentException("a grate's sides must be above zero and its open part from 0 to 1");
        }
    }

    /**
     * What is left when a part of the width is clogged.
     *
     * @param clogged from 0, clean, to 1, all of it
     */
    public SagGrate clogged(double clogged) {
        if (!(clogged >= 0 && clogged <= 1)) {
            throw new IllegalArgumentException("the clogged part must lie from 0 to 1, was " + clogged);
        }
        double clear = width.metres() * (1 - clogged);
        double edges = clear == 0 ? 0 : 2 * clear + (againstWall ? 1 : 2) * length.metres();
        return new SagGrate(new Length(edges), new Area(length.metres() * clear * openPart));
    }
}
