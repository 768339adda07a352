package org.fallrule.bookshelf;

import java.util.Arrays;
import java.util.List;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Frame;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryTransformer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * A lot among counties that are drawn in degrees. Lines straight in longitude and latitude stay straight (RFC 7946, section
 * 3.1.1): both are scaled to the metres that a degree has at the lot, which is true near the lot and need not be elsewhere.
 */
final class LotOnMap {
    /** How far to look for the length of a degree, metres. */
    private static final double STEP = 100;

    private final Geometry lot;
    private final AffineTransformation toMetres;

    /**
     * @param lot the lot in the plan's frame
     * @param frame where the frame lies
     */
    LotOnMap(Geometry lot, Frame frame) {
        Coordinate middle = lot.getEnvelopeInternal().centre();
        Coordinate here = frame.toLonLat(middle);
        Coordinate east = frame.toLonLat(new Coordinate(middle.x + STEP, middle.y));
        Coordinate north = frame.toLonLat(new Coordinate(middle.x, middle.y + STEP));
        this.toMetres = AffineTransformation.translationInstance(-here.x, -here.y)
                .scale(STEP / Math.IEEEremainder(east.x - here.x, 360), STEP / (north.y - here.y));
        this.lot = toMetres.transform(inDegrees(lot, frame));
    }

    private static Geometry inDegrees(Geometry lot, Frame frame) {
        return new GeometryTransformer() {
            @Override
            protected CoordinateSequence transformCoordinates(CoordinateSequence places, Geometry parent) {
                Coordinate[] moved = Arrays.stream(places.toCoordinateArray())
                        .map(frame::toLonLat)
                        .toArray(Coordinate[]::new);
                return createCoordinateSequence(moved);
            }
        }.transform(lot);
    }

    /** Whether the lot lies in a county, touches its line, or comes as near to it as the line is known. */
    boolean reaches(CountyArea county) {
        return toMetres.transform(county.area()).isWithinDistance(lot, reach(county));
    }

    /** Whether a part of the lot lies outside of all of these counties. */
    boolean leaves(List<CountyArea> counties) {
        return !UnaryUnionOp.union(counties.stream()
                        .map(county -> toMetres.transform(county.area()).buffer(reach(county)))
                        .toList())
                .covers(lot);
    }

    private static double reach(CountyArea county) {
        return county.accuracy().metres() + Dimension.LENGTH.tolerance();
    }
}
