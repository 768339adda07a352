package org.fallrule.reader.frame;

import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;

/** Copies of geometries with every vertex's x and y moved; Z, M, user data and the factory stay. */
final class Moved implements CoordinateSequenceFilter {
    private final UnaryOperator<Coordinate> move;

    private Moved(UnaryOperator<Coordinate> move) {
        this.move = move;
    }

    static Geometry copy(Geometry geometry, UnaryOperator<Coordinate> move) {
        Geometry copy = geometry.copy();
        copy.apply(new Moved(move));
        return copy;
    }

    @Override
    public void filter(CoordinateSequence vertices, int index) {
        Coordinate moved = move.apply(vertices.getCoordinate(index));
        vertices.setOrdinate(index, CoordinateSequence.X, moved.x);
        vertices.setOrdinate(index, CoordinateSequence.Y, moved.y);
    }

    @Override
    public boolean isDone() {
        return false;
    }

    @Override
    public boolean isGeometryChanged() {
        return true;
    }
}
