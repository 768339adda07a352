package org.fallrule.report.profile;

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
    /** For a desktop screen or for paper. */
    public static final SectionForm WIDE = new SectionForm(768, 44, 84, 130, 290, 30);

    /** For a telephone. */
    public static final SectionForm NARROW = new SectionForm(346, 40, 78, 130, 260, 24);

    double plotWidth() {
        return width - left - right;
    }
}
