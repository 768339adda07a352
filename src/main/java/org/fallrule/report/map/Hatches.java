package org.fallrule.report.map;

/** The hatches of areas as patterns of SVG. */
public final class Hatches {
    private Hatches() {}

    /** The pattern of a look in a drawing whose ids begin so. */
    public static void write(Svg svg, Look look, String prefix) {
        boolean slant = look.ink().hatch() == Ink.Hatch.SLANT;
        svg.open(
                "pattern",
                "id",
                Looks.hatchId(look, prefix),
                "width",
                7,
                "height",
                7,
                "patternUnits",
                "userSpaceOnUse",
                "patternTransform",
                slant ? "rotate(45)" : "rotate(30)");
        svg.empty("rect", "class", look.cssClass() + "-ground", "width", 7, "height", 7);
        if (slant) {
            svg.empty("path", "class", look.cssClass() + "-hatch", "d", "M0 0V7");
        } else {
            svg.empty("circle", "class", look.cssClass() + "-dots", "cx", 3, "cy", 3, "r", 1.1);
        }
        svg.close("pattern");
    }
}
