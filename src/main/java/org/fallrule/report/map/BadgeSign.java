package org.fallrule.report.map;

import org.fallrule.finding.Outcome;
import org.locationtech.jts.geom.Coordinate;

/** A finding's number: in a filled disc when it fails, in an open diamond when it is borderline. */
public final class BadgeSign {
    private BadgeSign() {}

    public static void draw(Canvas canvas, Outcome outcome, String number, Coordinate at, double radius) {
        boolean fails = outcome == Outcome.FAILS;
        String style = fails ? "m-badge-fails" : "m-badge-open";
        if (fails) {
            canvas.circle(style, at, radius);
        } else {
            String r = Svg.number(radius * 1.15);
            canvas.path(style, at, 0, "M0 -" + r + "L" + r + " 0L0 " + r + "L-" + r + " 0Z");
        }
        canvas.text(style + "-text", number, new Coordinate(at.x, at.y + 4), Canvas.Anchor.MIDDLE);
    }
}
