package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;

/** The symbols, each of a form of its own. */
final class Signs {
    private Signs() {}

    /** A symbol as the legend shows it, no higher than a row. */
    static void sample(Canvas canvas, Look look, Coordinate at) {
        if (look == Look.MEASURED_PLACE) {
            canvas.circle(look.cssClass(), at, 7);
        } else {
            draw(canvas, look, at);
        }
    }

    static void draw(Canvas canvas, Look look, Coordinate at) {
        String style = look.cssClass();
        switch (look) {
            case OUTFALL -> canvas.path(style, at, 0, "M-9 -6H9L0 9Z");
            case BASIN -> canvas.path(style, at, 0, "M-7 -7H7V7H-7ZM-7 0H7M0 -7V7");
            case TRENCH_DRAIN -> canvas.path(style, at, 0, "M-10 -4H10V4H-10ZM-5 -4V4M0 -4V4M5 -4V4");
            case DOWNSPOUT -> {
                canvas.circle(style, at, 7);
                canvas.circle("m-dot", at, 2.6);
            }
            case CLEANOUT -> {
                canvas.circle(style, at, 5.5);
                canvas.path(style, at, 0, "M-3.5 -3.5L3.5 3.5");
            }
            case TREE -> {
                canvas.circle(style, at, 9);
                canvas.path(style, at, 0, "M-4 0H4M0 -4V4");
            }
            case WELL -> {
                canvas.circle(style, at, 8);
                canvas.circle(style, at, 4);
            }
            case BEFORE_PLACE -> canvas.circle(style, at, 8);
            case BUILT_PLACE -> canvas.circle(style, at, 4);
            case MEASURED_PLACE -> canvas.circle(style, at, 13);
            default -> canvas.circle(style, at, 5);
        }
    }
}
