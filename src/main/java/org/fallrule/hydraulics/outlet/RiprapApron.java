package org.fallrule.hydraulics.outlet;

import java.util.List;
import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.hydraulics.table.RiprapClass;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * The stone that holds the ground below a pipe's outfall, and the apron made of it.
 *
 * @param stone the median size that the flow asks for
 * @param stoneClass number of the class of stone, 1 to 6
 * @param classSize median size of that class
 * @param length of the apron along the flow
 * @param thickness of the layer
 * @param widthAtEnd of the apron where it ends
 */
public record RiprapApron(
        Length stone, int stoneClass, Length classSize, Length length, Length thickness, Length widthAtEnd) {
    public static final Method METHOD = Method.named(
                    "riprap_apron",
                    "Riprap apron at a culvert outlet",
                    "Median size of the stone below an outfall, and length, depth and width of the apron.")
            .formula("D50 = 0.2 D (Q / (g^0.5 D^2.5))^(4/3) (D / TW)")
            .formula("rapid flow: D is replaced by (D + yn)/2")
            .formula(
                    "class 1 to 6 of D50 5, 6, 10, 14, 20, 22 in: length 4, 4, 5, 6, 7, 8 D; depth 3.5, 3.3, 2.4, 2.2, 2.0,"
                            + " 2.0 D50; width at end 3 D + (2/3) length")
            .symbol("D50", "median size of the stone", "m")
            .symbol("D", "inside diameter of the pipe", "m")
            .symbol("Q", "flow", "m3/s")
            .symbol("g", "acceleration of gravity", "m/s2")
            .symbol("TW", "depth of the tailwater above the outlet's invert, 0.4 D to 1.0 D", "m")
            .symbol("yn", "normal depth in the pipe", "m")
            .source("FHWA HEC-14, third edition, 2006, equations 10.4 and 10.5 (read), table 10.1 (from memory)")
            .limit("Tailwater is taken as 0.4 D where it is less or not known, and as 1.0 D where it is more.")
            .limit("Stone greater than class 6, median 22 in, is outside the table: no apron is given.")
            .limit(
                    "Found on culverts. For pipes of 4 to 8 in the smallest class, 5 in stone, is more than the flow asks"
                            + " for; counties often ask for less.");

    private static final List<RiprapClass> CLASSES = RiprapClass.all();
    private static final double LEAST_TAILWATER = 0.4;

    /** Apron for a pipe whose flow leaves it tranquil or full. */
    public static Answer<RiprapApron> of(Length bore, Flow flow, Length tailwater) {
        return of(bore, bore, flow, tailwater);
    }

    /** Apron for a pipe whose flow leaves it rapid, at its normal depth. */
    public static Answer<RiprapApron> ofRapidFlow(Length bore, Length normalDepth, Flow flow, Length tailwater) {
        return of(bore, new Length((bore.metres() + normalDepth.metres()) / 2), flow, tailwater);
    }

    /** The median size of stone that the flow asks for. */
    public static Length stoneSize(Length diameter, Flow flow, Length tailwater) {
        double d = diameter.metres();
        double tw = Math.min(d, Math.max(LEAST_TAILWATER * d, tailwater.metres()));
        double intensity = flow.cubicMetresPerSecond() / (Math.sqrt(Water.GRAVITY) * Math.pow(d, 2.5));
        return new Length(0.2 * d * Math.pow(intensity, 4.0 / 3) * d / tw);
    }

    private static Answer<RiprapApron> of(Length bore, Length effective, Flow flow, Length tailwater) {
        if (flow.cubicMetresPerSecond() <= 0) {
            return Answer.none("no water leaves the pipe, so nothing asks for stone");
        }
        Length stone = stoneSize(effective, flow, tailwater);
        return CLASSES.stream()
                .filter(row -> row.size().metres() >= stone.metres())
                .findFirst()
                .map(row -> Answer.of(apron(bore, stone, row)))
                .orElseGet(() ->
                        Answer.none("the flow asks for stone greater than class 6, median 22 in, which is where the"
                                + " table ends; an energy dissipator must be designed"));
    }

    private static RiprapApron apron(Length bore, Length stone, RiprapClass row) {
        Length size = row.size();
        Length length = bore.times(row.lengthInDiameters());
        Length width = bore.times(3).plus(length.times(2.0 / 3));
        return new RiprapApron(stone, row.number(), size, length, size.times(row.depthInStones()), width);
    }
}
