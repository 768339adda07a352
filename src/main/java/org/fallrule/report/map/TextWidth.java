package org.fallrule.report.map;

/**
 * About how wide words are in a plain sans-serif face. Without a font at hand the widths are those of common faces, taken
 * on the wide side, so that what is placed by them does not touch.
 */
public final class TextWidth {
    private static final String NARROW = "iljtfrI.,:;'|!()[]{} /\\-";
    private static final String WIDE = "mwMW@%&—…";

    private TextWidth() {}

    /** The width in pixels of words in a font of so many pixels. */
    public static double of(String text, double fontPx) {
        return 1.04 * fontPx * text.codePoints().mapToDouble(TextWidth::ems).sum();
    }

    private static double ems(int character) {
        if (NARROW.indexOf(character) >= 0) {
            return 0.38;
        }
        if (WIDE.indexOf(character) >= 0) {
            return 0.95;
        }
        if (character >= 0x1100) {
            return character >= 0x2066 && character <= 0x2069 ? 0 : 1.25;
        }
        return Character.isUpperCase(character) ? 0.7 : 0.6;
    }
}
