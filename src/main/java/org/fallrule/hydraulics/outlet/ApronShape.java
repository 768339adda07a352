package org.fallrule.hydraulics.outlet;

import org.fallrule.measure.Length;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * Widths and thickness of a stone apron whose length and stone are given, with little tailwater.
 *
 * @param widthAtPipe at the pipe
 * @param widthAtEnd at the far end
 * @param largestStone greatest stone
 * @param thickness of the layer
 */
public record ApronShape(Length widthAtPipe, Length widthAtEnd, Length largestStone, Length thickness) {
    public static final Method METHOD = Method.named(
                    "apron_shape",
                    "Shape of a stone apron with little tailwater",
                    "Widths, greatest stone and thickness of an apron of a given length and median stone.")
            .formula("W1 = 3 Do;  W2 = Do + La;  dmax = 1.5 d50;  T = 1.5 dmax")
            .symbol("W1, W2", "width at the pipe and at the end", "ft")
            .symbol("Do", "diameter of the pipe", "ft")
            .symbol("La", "length of the apron", "ft")
            .symbol("d50, dmax", "median and greatest stone", "ft")
            .symbol("T", "thickness", "ft")
            .source(
                    "North Carolina Erosion and Sediment Control Planning and Design Manual, practice 8.06, as used in permit"
                            + " sheets (sheets read)")
            .limit("Tailwater below half the diameter, or flat ground below the outfall.")
            .limit(
                    "An apron shorter than two diameters would end narrower than it begins: outside its range, no shape is"
                            + " given.")
            .limit("Length and median stone come from charts, which are not in here.");

    /** The shape; none where the apron is too short for its pipe. */
    public static Answer<ApronShape> of(Length diameter, Length length, Length medianStone) {
        Length begin = diameter.times(3);
        Length end = diameter.plus(length);
        if (end.metres() < begin.metres()) {
            return Answer.none(
                    "an apron shorter than two diameters would end narrower than it begins; take its length from"
                            + " the chart for this pipe");
        }
        Length largest = medianStone.times(1.5);
        return Answer.of(new ApronShape(begin, end, largest, largest.times(1.5)));
    }
}
