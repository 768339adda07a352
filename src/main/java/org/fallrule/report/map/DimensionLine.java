package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;

/** A measured distance: a line with a tick and an arrow at each end; where it is short the arrows point in from outside. */
public final class DimensionLine {
    private static final double SHORT = 30;
    private static final double TAIL = 18;

    private DimensionLine() {}

    /** Draws it from the one place to the other; as a ring where they are one. */
    public static void draw(Canvas canvas, Coordinate from, Coordinate to) {
        double length = from.distance(to);
        if (length < 1) {
            Signs.draw(canvas, Look.MEASURED_PLACE, from);
            return;
        }
        double degrees = Math.toDegrees(Math.atan2(to.y - from.y, to.x - from.x));
        String end = Svg.number(length);
        String data = length < SHORT ? outside(end, length) : "M0 0H" + end;
        canvas.placed("m-dimension", from, degrees, () -> {
            canvas.path("m-dimension-line", data + "M0 -8V8M" + end + " -8V8");
            canvas.path("m-dimension-arrow", arrow(0, length < SHORT) + arrow(length, length >= SHORT));
        });
    }

    private static String outside(String end, double length) {
        return "M" + Svg.number(-TAIL) + " 0H0M" + end + " 0H" + Svg.number(length + TAIL);
    }

    /** An arrowhead with its point at a place on the line, pointing to the right or to the left. */
    private static String arrow(double tip, boolean pointsRight) {
        double back = tip + (pointsRight ? -9 : 9);
        return "M" + Svg.number(tip) + " 0L" + Svg.number(back) + " -3.5V3.5Z";
    }
}
