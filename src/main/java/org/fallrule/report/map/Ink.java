package org.fallrule.report.map;

/**
 * How a kind of thing is drawn. Kinds never differ by colour alone: a hatch, a dash or a code goes with it.
 *
 * @param fill what its inside is painted with
 * @param stroke its edge or line
 * @param width width of the edge or line in screen pixels, whatever the map's scale
 * @param dash lengths of dashes and gaps in screen pixels as SVG writes them; empty for a full line
 * @param hatch what is drawn over the fill
 * @param code letters set along a line; empty for none
 * @param casing the edge along both sides of a line whose own colour is too light to be seen; none for most
 */
public record Ink(Tone fill, Tone stroke, double width, String dash, Hatch hatch, String code, Tone casing) {

    /** How far the casing of a line stands out beside it, in screen pixels. */
    private static final double CASING = 1.3;

    /** What is drawn over a fill. */
    public enum Hatch {
        NONE,
        /** Slanted lines. */
        SLANT,
        /** Dots. */
        DOTS
    }

    static Ink area(String fill, String fillOnDark) {
        return new Ink(new Tone(fill, fillOnDark), Tone.NONE, 0, "", Hatch.NONE, "", Tone.NONE);
    }

    static Ink line(String stroke, String strokeOnDark, double width) {
        return new Ink(Tone.NONE, new Tone(stroke, strokeOnDark), width, "", Hatch.NONE, "", Tone.NONE);
    }

    Ink edged(String stroke, String strokeOnDark, double newWidth) {
        return new Ink(fill, new Tone(stroke, strokeOnDark), newWidth, dash, hatch, code, casing);
    }

    Ink dashed(String newDash) {
        return new Ink(fill, stroke, width, newDash, hatch, code, casing);
    }

    Ink hatched(Hatch newHatch) {
        return new Ink(fill, stroke, width, dash, newHatch, code, casing);
    }

    Ink coded(String newCode) {
        return new Ink(fill, stroke, width, dash, hatch, newCode, casing);
    }

    Ink cased(String newCasing, String newCasingOnDark) {
        return new Ink(fill, stroke, width, dash, hatch, code, new Tone(newCasing, newCasingOnDark));
    }

    /** The width of the line with its casing. */
    public double casedWidth() {
        return width + 2 * CASING;
    }

    /** What the letters along the line are painted with: a colour that can be read. */
    public Tone letters() {
        return casing.isNone() ? stroke : new Tone(casing.light(), stroke.dark());
    }
}
