package org.fallrule.report.profile;

import org.fallrule.measure.Unit;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.Viewport;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The axes of a section. */
final class SectionAxes {
    private final Canvas canvas;
    private final Section section;
    private final Viewport viewport;
    private final Coordinate origin;

    /**
     * @param viewport where the drawing comes to lie, from its own upper left corner
     * @param origin where that corner lies on the sheet
     */
    SectionAxes(Canvas canvas, Section section, Viewport viewport, Coordinate origin) {
        this.canvas = canvas;
        this.section = section;
        this.viewport = viewport;
        this.origin = origin;
    }

    /** Elevations at the left, with a faint line for each. */
    void heights() {
        double foot = Unit.FOOT.toSi() * section.scale().exaggeration();
        Envelope view = section.drawing().view();
        double pxPerFoot = foot * viewport.pxPerMetre();
        double strip = 18 / pxPerFoot;
        Ticks ticks = Ticks.heights(view.getMinY() / foot, view.getMaxY() / foot - strip, pxPerFoot);
        for (double feet : ticks.all()) {
            double y = origin.y + viewport.px(new Coordinate(0, feet * foot)).y;
            String data = "M" + Svg.number(origin.x) + " " + Svg.number(y) + "h" + Svg.number(viewport.width());
            canvas.path("m-frame s-grid", data);
            words(Ticks.height(feet), origin.x - 5, y + 4, Canvas.Anchor.END);
        }
        words("ft", origin.x - 5, origin.y - 4, Canvas.Anchor.END);
    }

    private void words(String words, double x, double y, Canvas.Anchor anchor) {
        canvas.text("m-legend s-text", words, new Coordinate(x, y), anchor);
    }

    /** Stations below. */
    void stations() {
        double foot = Unit.FOOT.toSi();
        double bottom = origin.y + viewport.height();
        Ticks ticks = Ticks.stations(
                section.line().length() / foot, foot * section.scale().pxPerMetre());
        for (double feet : ticks.all()) {
            double x = origin.x + viewport.px(new Coordinate(feet * foot, 0)).x;
            canvas.path("m-frame s-axis", "M" + Svg.number(x) + " " + Svg.number(bottom) + "v5");
            words(Ticks.station(feet), x, bottom + 16, Canvas.Anchor.MIDDLE);
        }
    }
}
