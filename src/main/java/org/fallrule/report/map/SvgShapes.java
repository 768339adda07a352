package org.fallrule.report.map;

import org.locationtech.jts.geom.Geometry;

/** Areas, lines, symbols and dimensions as SVG, each with a title for whoever points at it. */
final class SvgShapes {
    private final Svg svg;
    private final String prefix;
    private final Viewport viewport;

    SvgShapes(Svg svg, String prefix, Viewport viewport) {
        this.svg = svg;
        this.prefix = prefix;
        this.viewport = viewport;
    }

    /** Draws a shape; labels and badges are lettering and come later. */
    void draw(Shape shape) {
        if (shape instanceof Shape.Area area) {
            titled(
                    area.title(),
                    () -> svg.empty(
                            "path", Looks.areaAttributes(area.look(), prefix, Svg.path(viewport.px(area.outline())))));
        } else if (shape instanceof Shape.Line line) {
            titled(line.title(), () -> line(line.look(), viewport.px(line.path())));
        } else if (shape instanceof Shape.Sign sign) {
            titled(sign.title(), () -> SvgSigns.draw(svg, sign.look(), viewport.px(sign.place())));
        } else if (shape instanceof Shape.Dimension dimension) {
            titled(
                    dimension.text(),
                    () -> SvgDimension.draw(svg, viewport.px(dimension.from()), viewport.px(dimension.to())));
        }
    }

    private void titled(String title, Runnable content) {
        svg.open("g").leaf("title", title);
        content.run();
        svg.close("g");
    }

    private void line(Look look, Geometry px) {
        svg.empty("path", "class", look.cssClass(), "d", Svg.path(px));
        if (look == Look.PIPE) {
            SvgLines.flow(svg, px);
        }
    }
}
