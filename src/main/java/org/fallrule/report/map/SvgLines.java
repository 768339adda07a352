package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** What stands along lines: the arrows of the flow, the codes of the utilities. */
final class SvgLines {
    private static final double SPACING = 95;
    private static final double SHORTEST = 26;

    private SvgLines() {}

    /** Arrows along a drain pipe, at least one on every part of it that is long enough. */
    static void flow(Svg svg, Geometry px) {
        for (int i = 0; i < px.getNumGeometries(); i++) {
            LengthIndexedLine line = new LengthIndexedLine(px.getGeometryN(i));
            double length = line.getEndIndex();
            int arrows = length < SHORTEST ? 0 : (int) Math.max(1, Math.round(length / SPACING));
            for (int k = 0; k < arrows; k++) {
                double station = (k + 0.5) * length / arrows;
                Coordinate before = line.extractPoint(station - 1);
                Coordinate after = line.extractPoint(station + 1);
                double degrees = Math.toDegrees(Math.atan2(after.y - before.y, after.x - before.x));
                arrow(svg, line.extractPoint(station), degrees);
            }
        }
    }

    static void arrow(Svg svg, Coordinate at, double degrees) {
        svg.empty(
                "path",
                "class",
                "m-flow",
                "transform",
                SvgSigns.moved(at) + " rotate(" + Svg.number(degrees) + ")",
                "d",
                "M-5 -6L8 0L-5 6L-2 0Z");
    }

    static void code(Svg svg, LineCodes.Code code) {
        svg.leaf(
                "text",
                code.look().ink().code(),
                "class",
                "m-code " + code.look().cssClass() + "-code",
                "transform",
                SvgSigns.moved(code.place()) + " rotate(" + Svg.number(code.degrees()) + ")",
                "y",
                3.8,
                "text-anchor",
                "middle");
    }
}
