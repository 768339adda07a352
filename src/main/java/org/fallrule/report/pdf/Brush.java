package org.fallrule.report.pdf;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fallrule.report.map.Ink;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.MapStyle;

/**
 * How a style of the drawings is painted on paper. Colours are those of a light ground.
 *
 * @param fill {@code none} or a colour as {@code #rrggbb}
 * @param stroke the same
 * @param width width of the stroke in pixels of the sheet
 * @param dash lengths of dashes and gaps in pixels; empty for a full line
 * @param font height of letters in pixels
 * @param bold whether letters are semibold
 * @param slanted whether letters are slanted
 * @param halo whether the stroke lies under the fill
 * @param round whether lines end round
 * @param strength share of the stroke's colour that shows; the rest is paper
 */
record Brush(
        String fill,
        String stroke,
        double width,
        String dash,
        double font,
        boolean bold,
        boolean slanted,
        boolean halo,
        boolean round,
        double strength) {
    private static final String NONE = "none";
    private static final String PAPER = "#ffffff";
    private static final Brush PLAIN = new Brush(NONE, NONE, 1, "", 12, false, false, false, false, 1);
    private static final Map<String, Look> LOOKS =
            Arrays.stream(Look.values()).collect(Collectors.toMap(Look::cssClass, Function.identity()));
    private static final double HALO = 3.5;

    /** The brush of one or several styles, the later laid over those before. */
    static Brush of(String styles) {
        Brush brush = PLAIN;
        for (String style : styles.split(" ", -1)) {
            brush = brush.with(style);
        }
        return brush;
    }

    /** The brush of a look without its hatch. */
    static Brush of(Look look) {
        return PLAIN.with(look.ink());
    }

    private Brush with(Ink ink) {
        return new Brush(
                ink.fill().light(),
                ink.stroke().light(),
                ink.width(),
                ink.dash(),
                font,
                bold,
                slanted,
                halo,
                round,
                strength);
    }

    private Brush with(String style) {
        Look look = LOOKS.get(style);
        if (look != null) {
            Brush brush = with(look.ink());
            return look == Look.MEASURED ? brush.roundly().faint(0.55) : brush;
        }
        return switch (style) {
            case "m-ground" -> filled(PAPER);
            case "m-frame", "m-leader" -> stroked(MapStyle.LINES.light(), 1);
            case "m-bar", "m-north" -> filled(PAPER).stroked(words(), 1);
            case "m-bar-half", "m-north-half", "m-dot" -> filled(words());
            case "m-edge" -> filled(NONE);
            case "m-flow" -> filled(words()).haloed(1.5);
            case "m-dimension-line" -> stroked(MapStyle.VALUE.light(), 2);
            case "m-dimension-arrow" -> filled(MapStyle.VALUE.light());
            case "m-badge-fails" -> filled(MapStyle.FAILS.light()).stroked(PAPER, 2);
            case "m-badge-open" -> filled(PAPER).stroked(words(), 2);
            case "m-badge-fails-text" -> filled(PAPER).lettered(12, true, false);
            case "m-badge-open-text" -> filled(words()).lettered(12, true, false);
            default -> lettering(style);
        };
    }

    private Brush lettering(String style) {
        return switch (style) {
            case "m-legend" -> filled(words()).lettered(11.5, bold, slanted);
            case "m-strong" -> lettered(font, true, slanted);
            case "m-label" -> filled(words()).haloed(HALO).lettered(12, true, false);
            case "m-value-label" -> filled(MapStyle.VALUE.light()).lettered(14, true, false);
            case "m-lot-label", "m-surface-label", "m-contour-label" -> lettered(12, false, true);
            case "m-limit-label" -> filled(MapStyle.VALUE.light()).lettered(12, false, true);
            case "m-code" -> haloed(HALO).lettered(10.5, true, false);
            case "s-text" -> lettered(11.5, bold, slanted);
            case "s-grid" -> stroked(stroke, 1).faint(0.28);
            case "s-axis", "s-pointer" -> stroked(stroke, 1);
            case "s-pole" -> stroked(stroke, 1).dashed("2 2");
            case "s-xing" -> filled(stroke).stroked(words(), 1.4).dashed("");
            case "s-earth" -> stroked(stroke, 1.2);
            default -> ofLook(style);
        };
    }

    /** The letters of a utility, the casing of a line, and a look's fill without its hatch. */
    private Brush ofLook(String style) {
        String name = style.substring(0, Math.max(0, style.lastIndexOf('-')));
        Look look = LOOKS.get(name);
        if (look != null && style.endsWith("-code")) {
            return filled(look.ink().letters().light());
        }
        if (look != null && style.endsWith("-casing")) {
            return stroked(look.ink().casing().light(), look.ink().casedWidth())
                    .dashed(look.ink().dash());
        }
        if (look != null && style.endsWith("-ground")) {
            return filled(look.ink().fill().light());
        }
        boolean ofRank = style.startsWith("m-") && style.endsWith("-label");
        if (ofRank) {
            return this;
        }
        throw new IllegalArgumentException("no brush for the style " + style);
    }

    private static String words() {
        return MapStyle.WORDS.light();
    }

    private Brush filled(String colour) {
        return new Brush(colour, stroke, width, dash, font, bold, slanted, halo, round, strength);
    }

    private Brush stroked(String colour, double newWidth) {
        return new Brush(fill, colour, newWidth, dash, font, bold, slanted, halo, round, strength);
    }

    private Brush haloed(double newWidth) {
        return new Brush(fill, PAPER, newWidth, "", font, bold, slanted, true, true, strength);
    }

    private Brush lettered(double size, boolean isBold, boolean isSlanted) {
        return new Brush(fill, stroke, width, dash, size, isBold, isSlanted, halo, round, strength);
    }

    private Brush dashed(String newDash) {
        return new Brush(fill, stroke, width, newDash, font, bold, slanted, halo, round, strength);
    }

    private Brush roundly() {
        return new Brush(fill, stroke, width, dash, font, bold, slanted, halo, true, strength);
    }

    private Brush faint(double share) {
        return new Brush(fill, stroke, width, dash, font, bold, slanted, halo, round, share);
    }

    boolean fills() {
        return !fill.equals(NONE);
    }

    boolean strokes() {
        return !stroke.equals(NONE) && width > 0;
    }
}
