package org.fallrule.report.map;

import org.fallrule.finding.Outcome;
import org.locationtech.jts.geom.Coordinate;

/** A finding's number: in a filled disc when it fails, in an open diamond when it is borderline. */
public final class SvgBadge {
    private SvgBadge() {}

    public static void draw(Svg svg, Outcome outcome, String number, Coordinate at, double radius) {
        boolean fails = outcome == Outcome.FAILS;
        String style = fails ? "m-badge-fails" : "m-badge-open";
        if (fails) {
            svg.empty("circle", "class", style, "cx", at.x, "cy", at.y, "r", radius);
        } else {
            String r = Svg.number(radius * 1.15);
            String data = "M0 -" + r + "L" + r + " 0L0 " + r + "L-" + r + " 0Z";
            svg.empty("path", "class", style, "transform", SvgSigns.moved(at), "d", data);
        }
        svg.leaf("text", number, "class", style + "-text", "x", at.x, "y", at.y + 4, "text-anchor", "middle");
    }
}
