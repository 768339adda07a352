package org.fallrule.report.pdf;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;

/**
 * A scale that a rule with divisions measures.
 *
 * @param words as a sheet states it: {@code 1 in = 20 ft}
 * @param ratio length on the ground to length on paper
 */
record DrawingScale(String words, double ratio) {
    private static final double POINTS_PER_METRE = 72 / 0.0254;

    /** Of the engineer's rule in feet to the inch, the largest first. */
    static final List<DrawingScale> FEET = inFeet(10, 20, 30, 40, 50);

    /** Smaller ones, for sites that would take too many sheets. */
    static final List<DrawingScale> MANY_FEET = inFeet(60, 100, 200, 500, 1000, 2000, 5000, 10_000, 50_000);

    static final List<DrawingScale> METRIC = ratios(100, 200, 250, 500);
    static final List<DrawingScale> SMALL_METRIC = ratios(1000, 2000, 5000, 10_000, 50_000, 100_000, 500_000);

    private static List<DrawingScale> inFeet(int... feet) {
        return Arrays.stream(feet)
                .mapToObj(each -> new DrawingScale("1 in = " + each + " ft", feetPerInch(each)))
                .toList();
    }

    private static List<DrawingScale> ratios(int... ratios) {
        return Arrays.stream(ratios)
                .mapToObj(each -> new DrawingScale(String.format(Locale.ROOT, "1:%d", each), each))
                .toList();
    }

    private static double feetPerInch(double feet) {
        return feet * Unit.FOOT.toSi() / Unit.INCH.toSi();
    }

    /** The scales for lengths of long sections, the largest first. */
    static List<DrawingScale> ofSections(boolean metric) {
        Stream<List<DrawingScale>> scales =
                metric ? Stream.of(ratios(50), METRIC, SMALL_METRIC) : Stream.of(inFeet(5), FEET, MANY_FEET);
        return scales.flatMap(List::stream).toList();
    }

    /** The scale in which heights are drawn, so many times as large. */
    String exaggerated(int times) {
        return words.startsWith("1:")
                ? "1:" + Printed.trimmed(ratio / times)
                : "1 in = " + Printed.trimmed(ratio / feetPerInch(1) / times) + " ft";
    }

    /** Points on paper to a metre on the ground. */
    double pointsPerMetre() {
        return POINTS_PER_METRE / ratio;
    }
}
