package org.fallrule.report.profile;

import org.fallrule.measure.Unit;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.Viewport;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The axes of a section. */
final class SectionAxes {
    private final Svg svg;
    private final Section section;
    private final Viewport viewport;
    private final Coordinate origin;

    /**
     * @param viewport where the drawing comes to lie, from its own upper left corner
     * @param origin where that corner lies on the sheet
     */
    SectionAxes(Svg svg, Section section, Viewport viewport, Coordinate origin) {
        this.svg = svg;
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
            svg.empty("path", "class", "m-frame s-grid", "d", data);
            svg.leaf(
                    "text",
                    Ticks.height(feet),
                    "class",
                    "m-legend s-text",
                    "x",
                    origin.x - 5,
                    "y",
                    y + 4,
                    "text-anchor",
                    "end");
        }
        svg.leaf("text", "ft", "class", "m-legend s-text", "x", origin.x - 5, "y", origin.y - 4, "text-anchor", "end");
    }

    /** Stations below. */
    void stations() {
        double foot = Unit.FOOT.toSi();
        double bottom = origin.y + viewport.height();
        Ticks ticks = Ticks.stations(
                section.line().length() / foot, foot * section.scale().pxPerMetre());
        for (double feet : ticks.all()) {
            double x = origin.x + viewport.px(new Coordinate(feet * foot, 0)).x;
            svg.empty("path", "class", "m-frame s-axis", "d", "M" + Svg.number(x) + " " + Svg.number(bottom) + "v5");
            svg.leaf(
                    "text",
                    Ticks.station(feet),
                    "class",
                    "m-legend s-text",
                    "x",
                    x,
                    "y",
                    bottom + 16,
                    "text-anchor",
                    "middle");
        }
    }
}
