package org.fallrule.report.profile;

import java.util.Locale;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.locationtech.jts.geom.Coordinate;

/**
 * The scales of a long section. A drawing's x is the station in metres, its y the elevation in metres times the exaggeration,
 * so that one pixel stands for the same in both.
 *
 * @param exaggeration how many times as large heights are drawn as lengths
 * @param pxPerMetre pixels to a metre of length
 */
public record SectionScale(int exaggeration, double pxPerMetre) {
    private static final int[] ROUND = {20, 10, 5, 2, 1};

    /** Heights as large as lengths. */
    static final SectionScale NATURAL = new SectionScale(1, 1);

    /** The largest round exaggeration at which a range of heights in metres fits the form. */
    static SectionScale fitting(double length, double range, SectionForm form) {
        double largest = form.pixelsPerFoot() / Unit.FOOT.toSi();
        double px = length > 0 ? Math.min(largest, form.plotWidth() / length) : largest;
        double most = form.heightFor(length * px);
        for (int exaggeration : ROUND) {
            if (range * exaggeration * px <= most) {
                return new SectionScale(exaggeration, px);
            }
        }
        return new SectionScale(1, Math.min(px, form.greatestHeight() / range));
    }

    /** The same scale of lengths for heights too. */
    SectionScale natural() {
        return new SectionScale(1, pxPerMetre);
    }

    /** Where a height at a station comes to lie in the drawing. */
    public Coordinate at(double station, Elevation height) {
        return new Coordinate(station, height.metres() * exaggeration);
    }

    /** So many pixels in the drawing's metres. */
    double metres(double px) {
        return px / pxPerMetre;
    }

    /** {@code Heights are drawn 5 times as large as lengths.} */
    public String words() {
        return exaggeration == 1
                ? "Heights and lengths are drawn to one scale."
                : String.format(
                        Locale.ROOT,
                        "Vertical exaggeration %d: heights are drawn %d times as large as lengths.",
                        exaggeration,
                        exaggeration);
    }
}
