package org.fallrule.reader.frame;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * The grid of a projection that is computed here. As with {@link GridUnprojection}, a place counts only when projecting it leads
 * back.
 *
 * @param meridian the central meridian, degrees
 * @param scale what the projection's metres are multiplied with
 * @param unit metres in the grid's unit
 * @param east easting of the projection's origin, in the grid's unit
 * @param north northing of the projection's origin, in the grid's unit
 */
record PlaneGrid(Projection projection, double meridian, double scale, double unit, double east, double north)
        implements Unprojection {

    @Override
    public Optional<Coordinate> lonLat(double x, double y) {
        double[] angles = projection.inverse((x - east) * unit / scale, (y - north) * unit / scale);
        double lon = meridian + Math.toDegrees(angles[0]);
        double lat = Math.toDegrees(angles[1]);
        boolean place =
                Math.abs(lon) <= GridUnprojection.FARTHEST_LONGITUDE && Math.abs(lat) <= 90 && leadsBack(angles, x, y);
        return place ? Optional.of(new Coordinate(Math.IEEEremainder(lon, 360), lat)) : Optional.empty();
    }

    private boolean leadsBack(double[] angles, double x, double y) {
        Coordinate back = at(angles[0], angles[1]);
        return Math.abs(back.x - x) < GridUnprojection.LEADS_BACK && Math.abs(back.y - y) < GridUnprojection.LEADS_BACK;
    }

    @Override
    public Optional<Coordinate> grid(double lon, double lat) {
        Coordinate grid = at(Math.toRadians(Math.IEEEremainder(lon - meridian, 360)), Math.toRadians(lat));
        return Double.isFinite(grid.x) && Double.isFinite(grid.y) ? Optional.of(grid) : Optional.empty();
    }

    private Coordinate at(double lambda, double phi) {
        double[] metres = projection.forward(lambda, phi);
        return new Coordinate(metres[0] * scale / unit + east, metres[1] * scale / unit + north);
    }
}
