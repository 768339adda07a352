package org.fallrule.report.map;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The style sheet of maps: every look on a light ground, on a dark one where the reader's screen is dark, light in print. */
public final class MapStyle {
    private static final Tone GROUND = new Tone("#fbfbf8", "#14181c");
    public static final Tone WORDS = new Tone("#14181c", "#f2f4f6");
    public static final Tone VALUE = new Tone("#9c2c06", "#ffb08a");
    public static final Tone FAILS = new Tone("#a3140c", "#ff8f84");
    public static final Tone LINES = new Tone("#55606a", "#a9b3bc");

    private static final String FIXED = """
            .map{display:block;max-width:100%;height:auto;font-family:system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif}
            .map path,.map circle,.map rect{vector-effect:non-scaling-stroke}
            .map path{stroke-linejoin:round}
            .map text{font-size:12px}
            .map .m-label,.map .m-code{stroke-width:3.5px;stroke-linejoin:round;paint-order:stroke}
            .map .m-label{font-weight:600}
            .map .m-value-label{font-size:14px;font-weight:700}
            .map .m-lot-label,.map .m-contour-label,.map .m-surface-label,.map .m-limit-label{font-weight:400;font-style:italic}
            .map .m-code{font-size:10.5px;font-weight:700}
            .map .m-legend{font-size:11.5px}
            .map .m-strong,.map .m-badge-fails-text,.map .m-badge-open-text{font-weight:700}
            .map .m-frame,.map .m-leader,.map .m-dimension-line{fill:none}
            .map .m-leader{stroke-width:1}
            .map .m-dimension-line{stroke-width:2}
            .map .m-flow{stroke-width:1.5;paint-order:stroke}
            .map .m-measured{stroke-linecap:round;opacity:.55}
            .map .m-badge-fails,.map .m-badge-open{stroke-width:2}
            .map a:focus-visible{outline:3px solid;outline-offset:2px}
            """;

    private MapStyle() {}

    public static String css() {
        return FIXED
                + Arrays.stream(Look.values()).map(MapStyle::measures).collect(Collectors.joining())
                + tones(Tone::light)
                + "@media screen and (prefers-color-scheme:dark){\n" + tones(Tone::dark) + "}\n";
    }

    private static String measures(Look look) {
        Ink ink = look.ink();
        String name = ".map ." + look.cssClass();
        StringBuilder css = new StringBuilder();
        if (!ink.stroke().isNone()) {
            css.append(name).append("{stroke-width:").append(Svg.number(ink.width()));
            css.append(ink.dash().isEmpty() ? "" : ";stroke-dasharray:" + ink.dash());
            css.append("}\n");
        }
        if (!ink.casing().isNone()) {
            css.append(name).append("-casing{fill:none;stroke-width:").append(Svg.number(ink.casedWidth()));
            css.append(ink.dash().isEmpty() ? "" : ";stroke-dasharray:" + ink.dash());
            css.append("}\n");
        }
        if (ink.hatch() == Ink.Hatch.SLANT) {
            css.append(name).append("-hatch{stroke-width:1.6;fill:none}\n");
        }
        return css.toString();
    }

    private static String tones(Function<Tone, String> side) {
        String ground = side.apply(GROUND);
        String words = side.apply(WORDS);
        String value = side.apply(VALUE);
        String fails = side.apply(FAILS);
        String lines = side.apply(LINES);
        return Arrays.stream(Look.values()).map(look -> tones(look, side)).collect(Collectors.joining())
                + rule(".m-ground,.m-bar,.m-north", "fill", ground)
                + rule(".m-label,.m-legend,.m-dot,.m-bar-half,.m-north-half,.m-flow,.m-badge-open-text", "fill", words)
                + rule(".m-label,.m-code,.m-flow", "stroke", ground)
                + rule(".m-value-label,.m-limit-label,.m-dimension-arrow", "fill", value)
                + rule(".m-dimension-line", "stroke", value)
                + rule(".m-frame,.m-leader", "stroke", lines)
                + rule(".m-bar,.m-north", "stroke", words)
                + rule(".m-badge-fails", "fill", fails)
                + rule(".m-badge-fails", "stroke", ground)
                + rule(".m-badge-fails-text,.m-badge-open", "fill", ground)
                + rule(".m-badge-open", "stroke", words);
    }

    private static String tones(Look look, Function<Tone, String> side) {
        Ink ink = look.ink();
        String stroke = side.apply(ink.stroke());
        String fill = side.apply(ink.fill());
        String name = "." + look.cssClass();
        return switch (ink.hatch()) {
            case NONE ->
                rule(name, "fill", fill + ";stroke:" + stroke)
                        + (ink.code().isEmpty() ? "" : rule(name + "-code", "fill", side.apply(ink.letters())))
                        + (ink.casing().isNone() ? "" : rule(name + "-casing", "stroke", side.apply(ink.casing())));
            case SLANT ->
                rule(name, "stroke", stroke)
                        + rule(name + "-ground", "fill", fill)
                        + rule(name + "-hatch", "stroke", stroke + ";stroke-opacity:.45");
            case DOTS ->
                rule(name, "stroke", stroke)
                        + rule(name + "-ground", "fill", fill)
                        + rule(name + "-dots", "fill", stroke);
        };
    }

    private static String rule(String classes, String property, String value) {
        String selectors = Arrays.stream(classes.split(",", -1))
                .map(name -> ".map " + name)
                .collect(Collectors.joining(","));
        return selectors + "{" + property + ":" + value + "}\n";
    }
}
