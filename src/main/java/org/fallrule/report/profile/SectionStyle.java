package org.fallrule.report.profile;

/** What the style sheet of maps lacks for long sections. Colours come with the looks. */
public final class SectionStyle {
    private static final String CSS = """
            .map .s-grid{stroke-width:1;fill:none;stroke-opacity:.28}
            .map .s-axis{stroke-width:1;fill:none}
            .map .s-pole{stroke-width:1;fill:none;stroke-dasharray:2 2}
            .map .s-text{font-size:11.5px}
            .map .s-xing.s-xing{stroke-dasharray:none;stroke-width:2}
            .map .s-earth.s-earth{stroke-width:1.2}
            .map .s-pointer{stroke-width:1;fill:none}
            """;

    private SectionStyle() {}

    public static String css() {
        return CSS;
    }
}
