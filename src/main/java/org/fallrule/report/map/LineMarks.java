package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** What stands along lines: the arrows of the flow, the codes of the utilities. */
final class LineMarks {
    private static final double SPACING = 95;
    private static final double SHORTEST = 26;

    private LineMarks() {}

    /** Arrows along a drain pipe, at least one on every part of it that is long enough. */
    static void flow(Canvas canvas, Geometry px) {
        for (int i = 0; i < px.getNumGeometries(); i++) {
            LengthIndexedLine line = new LengthIndexedLine(px.getGeometryN(i));
            double length = line.getEndIndex();
            int arrows = length < SHORTEST ? 0 : (int) Math.max(1, Math.round(length / SPACING));
            for (int k = 0; k < arrows; k++) {
                double station = (k + 0.5) * length / arrows;
                Coordinate before = line.extractPoint(station - 1);
                Coordinate after = line.extractPoint(station + 1);
                double degrees = Math.toDegrees(Math.atan2(after.y - before.y, after.x - before.x));
                arrow(canvas, line.extractPoint(station), degrees);
            }
        }
    }

    static void arrow(Canvas canvas, Coordinate at, double degrees) {
        canvas.path("m-flow", at, degrees, "M-5 -6L8 0L-5 6L-2 0Z");
    }

    static void code(Canvas canvas, LineCodes.Code code) {
        String style = "m-code " + code.look().cssClass() + "-code";
        canvas.placed(
                "m-along",
                code.place(),
                code.degrees(),
                () -> canvas.text(style, code.look().ink().code(), new Coordinate(0, 3.8), Canvas.Anchor.MIDDLE));
    }
}
