package org.fallrule.reader.frame;

import java.util.Optional;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.locationtech.jts.geom.Coordinate;

/** Unprojects by a parsed definition's own inverse projection, whatever order of axes the definition names. */
final class GridUnprojection implements Unprojection {
    private final MathTransform inverse;
    private final boolean gridNorthFirst;
    private final boolean baseNorthFirst;

    GridUnprojection(MathTransform inverse, boolean gridNorthFirst, boolean baseNorthFirst) {
        this.inverse = inverse;
        this.gridNorthFirst = gridNorthFirst;
        this.baseNorthFirst = baseNorthFirst;
    }

    @Override
    public Optional<Coordinate> lonLat(double x, double y) {
        double[] point = gridNorthFirst ? new double[] {y, x} : new double[] {x, y};
        try {
            inverse.transform(point, 0, point, 0, 1);
        } catch (TransformException e) {
            return Optional.empty();
        }
        double lon = point[baseNorthFirst ? 1 : 0];
        double lat = point[baseNorthFirst ? 0 : 1];
        boolean onEarth = Double.isFinite(lon) && Math.abs(lat) <= 90;
        return onEarth ? Optional.of(new Coordinate(Math.IEEEremainder(lon, 360), lat)) : Optional.empty();
    }
}
