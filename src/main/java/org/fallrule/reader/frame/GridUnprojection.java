package org.fallrule.reader.frame;

import java.util.Optional;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.NoninvertibleTransformException;
import org.geotools.api.referencing.operation.TransformException;
import org.locationtech.jts.geom.Coordinate;

/**
 * Unprojects by a parsed definition's own inverse projection, whatever order of axes the definition names. Far outside its area
 * an inverse projection by series may give any place on earth, so a place counts only when projecting it leads back.
 */
final class GridUnprojection implements Unprojection {
    /** In the grid's unit, metres or feet; within a zone the way back is good to a thousandth of this. */
    static final double LEADS_BACK = 0.01;

    /** Zones that cross the 180th meridian run on beyond it, Alaska's outermost to 188 degrees west. */
    static final double FARTHEST_LONGITUDE = 200;

    private final MathTransform forward;
    private final MathTransform inverse;
    private final boolean gridNorthFirst;
    private final boolean baseNorthFirst;

    GridUnprojection(MathTransform forward, boolean gridNorthFirst, boolean baseNorthFirst)
            throws NoninvertibleTransformException {
        this.forward = forward;
        this.inverse = forward.inverse();
        this.gridNorthFirst = gridNorthFirst;
        this.baseNorthFirst = baseNorthFirst;
    }

    @Override
    public Optional<Coordinate> lonLat(double x, double y) {
        double[] grid = gridNorthFirst ? new double[] {y, x} : new double[] {x, y};
        double[] base = new double[2];
        try {
            inverse.transform(grid, 0, base, 0, 1);
            double lon = base[baseNorthFirst ? 1 : 0];
            double lat = base[baseNorthFirst ? 0 : 1];
            boolean place = Math.abs(lon) <= FARTHEST_LONGITUDE && Math.abs(lat) <= 90 && leadsBack(base, grid);
            return place ? Optional.of(new Coordinate(Math.IEEEremainder(lon, 360), lat)) : Optional.empty();
        } catch (TransformException | IllegalArgumentException e) {
            // The second comes where a series gives a latitude of many turns.
            return Optional.empty();
        }
    }

    @Override
    public Optional<Coordinate> grid(double lon, double lat) {
        double[] base = baseNorthFirst ? new double[] {lat, lon} : new double[] {lon, lat};
        double[] grid = new double[2];
        try {
            forward.transform(base, 0, grid, 0, 1);
        } catch (TransformException | IllegalArgumentException e) {
            return Optional.empty();
        }
        boolean finite = Double.isFinite(grid[0]) && Double.isFinite(grid[1]);
        int x = gridNorthFirst ? 1 : 0;
        return finite ? Optional.of(new Coordinate(grid[x], grid[1 - x])) : Optional.empty();
    }

    private boolean leadsBack(double[] base, double[] grid) throws TransformException {
        double[] back = new double[2];
        forward.transform(base, 0, back, 0, 1);
        return Math.abs(back[0] - grid[0]) < LEADS_BACK && Math.abs(back[1] - grid[1]) < LEADS_BACK;
    }
}
