package org.fallrule.report.profile;

import java.util.Arrays;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Tone;

/** What the style sheet of maps lacks for long sections. Colours come with the looks. */
public final class SectionStyle {
    private static final Tone EDGE = new Tone("#14181c", "#f2f4f6");

    private static final String CSS = """
            .map .s-grid{stroke-width:1;fill:none;stroke-opacity:.28}
            .map .s-axis{stroke-width:1;fill:none}
            .map .s-pole{stroke-width:1;fill:none;stroke-dasharray:2 2}
            .map .s-text{font-size:11.5px}
            .map .s-xing.s-xing{stroke-dasharray:none;stroke-width:1.4}
            .map .s-earth.s-earth{stroke-width:1.2}
            .map .s-pointer{stroke-width:1;fill:none}
            """;

    private SectionStyle() {}

    public static String css() {
        return CSS + tones(Tone::light) + "@media screen and (prefers-color-scheme:dark){\n" + tones(Tone::dark)
                + "}\n";
    }

    /** A utility that is cut across is a disc of its colour with an edge that stands out on any ground. */
    private static String tones(Function<Tone, String> side) {
        return Arrays.stream(Look.values())
                .filter(SectionKey::isUtility)
                .map(look -> ".map ." + look.cssClass() + ".s-xing{fill:"
                        + side.apply(look.ink().stroke()) + ";stroke:" + side.apply(EDGE) + "}\n")
                .collect(Collectors.joining());
    }
}
