package org.fallrule.report.profile;

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
        double unit = section.units().metres() * section.scale().exaggeration();
        Envelope view = section.drawing().view();
        double pxPerUnit = unit * viewport.pxPerMetre();
        double strip = 18 / pxPerUnit;
        Ticks ticks = Ticks.heights(view.getMinY() / unit, view.getMaxY() / unit - strip, pxPerUnit);
        for (double place : ticks.all()) {
            double y = origin.y + viewport.px(new Coordinate(0, place * unit)).y;
            String data = "M" + Svg.number(origin.x) + " " + Svg.number(y) + "h" + Svg.number(viewport.width());
            canvas.path("m-frame s-grid", data);
            words(ticks.height(place), origin.x - 5, y + 4, Canvas.Anchor.END);
        }
        words(section.units().symbol(), origin.x - 5, origin.y - 4, Canvas.Anchor.END);
    }

    private void words(String words, double x, double y, Canvas.Anchor anchor) {
        canvas.text("m-legend s-text", words, new Coordinate(x, y), anchor);
    }

    /** Stations below. */
    void stations() {
        double unit = section.units().metres();
        double bottom = origin.y + viewport.height();
        Ticks ticks = Ticks.stations(
                Math.max(0, section.reach().from()) / unit,
                section.reach().to() / unit,
                unit * section.scale().pxPerMetre());
        for (double place : ticks.all()) {
            double x = origin.x + viewport.px(new Coordinate(place * unit, 0)).x;
            canvas.path("m-frame s-axis", "M" + Svg.number(x) + " " + Svg.number(bottom) + "v5");
            words(Ticks.station(place, section.units()), x, bottom + 16, Canvas.Anchor.MIDDLE);
        }
    }
}
