package org.fallrule.report.profile;

import org.fallrule.measure.Unit;

/**
 * The form of a printed long section, in screen pixels.
 *
 * @param width width of the whole sheet
 * @param left room at the left for the elevations
 * @param right room at the right for what is written at the last structure
 * @param leastHeight least height of the drawn part
 * @param greatestHeight greatest height of the drawn part
 * @param pixelsPerFoot greatest scale of lengths, so that a short branch is not blown up
 */
public record SectionForm(
        double width, double left, double right, double leastHeight, double greatestHeight, double pixelsPerFoot) {
    private static final double SLENDER = 0.75;

    /** For a desktop screen or for paper. */
    public static final SectionForm WIDE = new SectionForm(768, 46, 84, 130, 290, 30);

    /** For a telephone. */
    public static final SectionForm NARROW = new SectionForm(346, 40, 78, 130, 260, 24);

    /** For a printed sheet; its width and scale are those of the paper. */
    public static final SectionForm PAPER = new SectionForm(688, 46, 84, 110, 200, 30);

    /** For the profile of one finding, as wide as its map. */
    public static final SectionForm SNIPPET = new SectionForm(340, 46, 10, 90, 170, 60);

    /** The form on a sheet so wide. */
    public SectionForm wide(double sheet) {
        return new SectionForm(sheet, left, right, leastHeight, greatestHeight, pixelsPerFoot);
    }

    /** The form with a drawn part no higher than so many pixels. */
    public SectionForm low(double height) {
        return new SectionForm(width, left, right, Math.min(height, leastHeight), height, pixelsPerFoot);
    }

    /** The form with no more than so many pixels to a metre of length. */
    public SectionForm atMost(double pxPerMetre) {
        return new SectionForm(width, left, right, leastHeight, greatestHeight, pxPerMetre * Unit.FOOT.toSi());
    }

    /** The form with so much room at the right. */
    SectionForm withRight(double room) {
        return new SectionForm(width, left, room, leastHeight, greatestHeight, pixelsPerFoot);
    }

    /** The greatest height of a drawn part so wide: a short branch is not drawn as a tower. */
    double heightFor(double plotWidth) {
        return Math.max(leastHeight, Math.min(greatestHeight, SLENDER * plotWidth));
    }

    double plotWidth() {
        return width - left - right;
    }
}
