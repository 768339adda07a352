package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;

/** Paints a map with its upper left corner at the canvas's own. */
public final class MapPainter {
    private final Canvas canvas;
    private final Drawing drawing;
    private final Viewport viewport;

    public MapPainter(Canvas canvas, Drawing drawing, Viewport viewport) {
        this.canvas = canvas;
        this.drawing = drawing;
        this.viewport = viewport;
    }

    /** All that may reach over the map's edge and must be cut there. */
    public void inside() {
        canvas.box("m-ground", new Coordinate(0, 0), viewport.width(), viewport.height());
        ShapePainter shapes = new ShapePainter(canvas, viewport);
        for (DrawingLayer layer : drawing.layers()) {
            canvas.layer(layer.name(), () -> layer.shapes().forEach(shapes::draw));
        }
        new LetteringPainter(canvas).draw(new Lettering(drawing, viewport));
    }

    public void frame() {
        canvas.box("m-frame", new Coordinate(0.5, 0.5), viewport.width() - 1, viewport.height() - 1);
    }
}
