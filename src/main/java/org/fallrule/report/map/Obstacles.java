package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** What labels must keep off, as small boxes in pixels of the sheet. */
final class Obstacles {
    /** Longest piece of a line that is taken as one box, so that the boxes of a slanting line stay near it. */
    private static final double PIECE = 8;

    private static final double SIGN = 10;
    private static final double RING = 15;
    private static final double PIPE = 6;

    private final Viewport viewport;
    private final Envelope around;
    private final List<Envelope> closed = new ArrayList<>();
    private final List<Envelope> crossed = new ArrayList<>();

    Obstacles(Drawing drawing, Viewport viewport) {
        this.viewport = viewport;
        this.around = viewport.sheet();
        around.expandBy(20);
        drawing.layers().forEach(layer -> layer.shapes().forEach(this::add));
    }

    List<Envelope> closed() {
        return closed;
    }

    List<Envelope> crossed() {
        return crossed;
    }

    private void add(Shape shape) {
        if (shape instanceof Shape.Line line && line.look().isDrain()) {
            addPath(viewport.px(line.path()), PIPE, closed);
        } else if (shape instanceof Shape.Line line && line.look() != Look.CONTOUR && line.look() != Look.MEASURED) {
            addPath(viewport.px(line.path()), 1, crossed);
        } else if (shape instanceof Shape.Area area) {
            addPath(viewport.px(area.outline().getBoundary()), 1, crossed);
        } else if (shape instanceof Shape.Sign sign) {
            addBox(
                    viewport.px(sign.place()),
                    sign.look() == Look.MEASURED_PLACE ? RING : SIGN,
                    sign.look() == Look.TREE ? crossed : closed);
        } else if (shape instanceof Shape.Dimension dimension) {
            addPiece(viewport.px(dimension.from()), viewport.px(dimension.to()), PIPE, closed);
        } else if (shape instanceof Shape.Badge badge) {
            addBox(viewport.px(badge.place()), 3, closed);
        }
    }

    private void addPath(Geometry path, double half, List<Envelope> boxes) {
        for (int i = 0; i < path.getNumGeometries(); i++) {
            Coordinate[] places = path.getGeometryN(i).getCoordinates();
            for (int j = 1; j < places.length; j++) {
                addPiece(places[j - 1], places[j], half, boxes);
            }
        }
    }

    private void addPiece(Coordinate from, Coordinate to, double half, List<Envelope> boxes) {
        int pieces = Math.min(1000, (int) Math.ceil(from.distance(to) / PIECE));
        for (int k = 0; k <= pieces; k++) {
            double share = pieces == 0 ? 0 : (double) k / pieces;
            addBox(
                    new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)),
                    Math.max(half, pieces == 0 ? half : from.distance(to) / pieces / 2),
                    boxes);
        }
    }

    private void addBox(Coordinate middle, double half, List<Envelope> boxes) {
        Envelope box = new Envelope(middle);
        box.expandBy(half);
        if (around.intersects(box)) {
            boxes.add(box);
        }
    }
}
