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
 */
public record Ink(Tone fill, Tone stroke, double width, String dash, Hatch hatch, String code) {

    /** What is drawn over a fill. */
    public enum Hatch {
        NONE,
        /** Slanted lines. */
        SLANT,
        /** Dots. */
        DOTS
    }

    static Ink area(String fill, String fillOnDark) {
        return new Ink(new Tone(fill, fillOnDark), Tone.NONE, 0, "", Hatch.NONE, "");
    }

    static Ink line(String stroke, String strokeOnDark, double width) {
        return new Ink(Tone.NONE, new Tone(stroke, strokeOnDark), width, "", Hatch.NONE, "");
    }

    Ink edged(String stroke, String strokeOnDark, double newWidth) {
        return new Ink(fill, new Tone(stroke, strokeOnDark), newWidth, dash, hatch, code);
    }

    Ink dashed(String newDash) {
        return new Ink(fill, stroke, width, newDash, hatch, code);
    }

    Ink hatched(Hatch newHatch) {
        return new Ink(fill, stroke, width, dash, newHatch, code);
    }

    Ink coded(String newCode) {
        return new Ink(fill, stroke, width, dash, hatch, newCode);
    }
}
