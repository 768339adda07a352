package org.fallrule.report.map;

import org.locationtech.jts.geom.Geometry;

/** Paints areas, lines, symbols and dimensions, each with a title for whoever points at it. */
final class ShapePainter {
    private final Canvas canvas;
    private final Viewport viewport;

    ShapePainter(Canvas canvas, Viewport viewport) {
        this.canvas = canvas;
        this.viewport = viewport;
    }

    /** Draws a shape; labels and badges are lettering and come later. */
    void draw(Shape shape) {
        if (shape instanceof Shape.Area area) {
            canvas.titled(area.title(), area.feature(), () -> canvas.area(area.look(), viewport.px(area.outline())));
        } else if (shape instanceof Shape.Line line) {
            canvas.titled(line.title(), line.feature(), () -> line(line.look(), viewport.px(line.path())));
        } else if (shape instanceof Shape.Sign sign) {
            canvas.titled(
                    sign.title(), sign.feature(), () -> Signs.draw(canvas, sign.look(), viewport.px(sign.place())));
        } else if (shape instanceof Shape.Dimension dimension) {
            canvas.titled(
                    dimension.text(),
                    () -> DimensionLine.draw(canvas, viewport.px(dimension.from()), viewport.px(dimension.to())));
        }
    }

    private void line(Look look, Geometry px) {
        canvas.line(look, px);
        if (look.isDrain()) {
            LineMarks.flow(canvas, px);
        }
    }
}
