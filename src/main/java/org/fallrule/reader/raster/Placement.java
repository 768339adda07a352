package org.fallrule.reader.raster;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.NoninvertibleTransformationException;

/**
 * Where a raster's cell centres lie in its coordinate reference system.
 *
 * @param toCrs takes column and row of a cell, counted from 0 at the upper left, to the easting and northing of its centre
 * @param fromCrs the way back
 */
record Placement(AffineTransformation toCrs, AffineTransformation fromCrs) {

    /**
     * @throws IllegalArgumentException when cells would have no size, or no finite one
     */
    static Placement of(AffineTransformation toCrs) {
        for (double entry : toCrs.getMatrixEntries()) {
            if (!Double.isFinite(entry)) {
                throw new IllegalArgumentException("the raster's place on earth has a number that is not finite");
            }
        }
        try {
            return new Placement(toCrs, toCrs.getInverse());
        } catch (NoninvertibleTransformationException e) {
            throw new IllegalArgumentException("the raster's cells have no size", e);
        }
    }

    Coordinate centre(double column, double row) {
        return toCrs.transform(new Coordinate(column, row), new Coordinate());
    }

    Coordinate cell(Coordinate position) {
        return fromCrs.transform(position, new Coordinate());
    }
}
