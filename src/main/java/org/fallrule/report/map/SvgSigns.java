package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;

/** The symbols, each of a form of its own. */
final class SvgSigns {
    private SvgSigns() {}

    /** A symbol as the legend shows it, no higher than a row. */
    static void sample(Svg svg, Look look, Coordinate at) {
        if (look == Look.MEASURED_PLACE) {
            circle(svg, look.cssClass(), at, 7);
        } else {
            draw(svg, look, at);
        }
    }

    static void draw(Svg svg, Look look, Coordinate at) {
        String style = look.cssClass();
        switch (look) {
            case OUTFALL -> path(svg, style, at, "M-9 -6H9L0 9Z");
            case BASIN -> path(svg, style, at, "M-7 -7H7V7H-7ZM-7 0H7M0 -7V7");
            case TRENCH_DRAIN -> path(svg, style, at, "M-10 -4H10V4H-10ZM-5 -4V4M0 -4V4M5 -4V4");
            case DOWNSPOUT -> {
                circle(svg, style, at, 7);
                circle(svg, "m-dot", at, 2.6);
            }
            case CLEANOUT -> {
                circle(svg, style, at, 5.5);
                path(svg, style, at, "M-3.5 -3.5L3.5 3.5");
            }
            case TREE -> {
                circle(svg, style, at, 9);
                path(svg, style, at, "M-4 0H4M0 -4V4");
            }
            case WELL -> {
                circle(svg, style, at, 8);
                circle(svg, style, at, 4);
            }
            case MEASURED_PLACE -> circle(svg, style, at, 13);
            default -> circle(svg, style, at, 5);
        }
    }

    private static void circle(Svg svg, String style, Coordinate at, double radius) {
        svg.empty("circle", "class", style, "cx", at.x, "cy", at.y, "r", radius);
    }

    private static void path(Svg svg, String style, Coordinate at, String data) {
        svg.empty("path", "class", style, "transform", moved(at), "d", data);
    }

    static String moved(Coordinate at) {
        return "translate(" + Svg.number(at.x) + " " + Svg.number(at.y) + ")";
    }
}
