package org.fallrule.reader.raster;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.site.HeightField;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The heights of a window of a raster, in metres. */
final class RasterHeights implements HeightField {
    /** In cells; a place so close to a centre or a line of centres is taken to be on it. */
    private static final double ON_CENTRE = 1e-6;

    private final CellWindow window;
    private final double[] metres;
    private final CellMap map;
    private final Envelope extent;

    RasterHeights(CellWindow window, double[] metres, CellMap map, Envelope extent) {
        this.window = window;
        this.metres = metres;
        this.map = map;
        this.extent = extent;
    }

    @Override
    public Optional<Elevation> heightAt(Coordinate local) {
        Coordinate cells = inCells(local);
        double u = snapped(cells.x);
        double v = snapped(cells.y);
        if (!(u >= 0 && v >= 0 && u <= window.columns() - 1 && v <= window.rows() - 1)) {
            return Optional.empty();
        }
        int column = (int) u;
        int row = (int) v;
        double upper = between(at(column, row), u - column, column, row);
        double height =
                v == row ? upper : mix(upper, between(at(column, row + 1), u - column, column, row + 1), v - row);
        return Double.isNaN(height) ? Optional.empty() : Optional.of(new Elevation(height));
    }

    private double between(double left, double share, int column, int row) {
        return share == 0 ? left : mix(left, at(column + 1, row), share);
    }

    private static double mix(double one, double other, double share) {
        return one * (1 - share) + other * share;
    }

    private static double snapped(double cells) {
        double centre = Math.rint(cells);
        return Math.abs(cells - centre) < ON_CENTRE ? centre : cells;
    }

    private double at(int column, int row) {
        return metres[row * window.columns() + column];
    }

    @Override
    public Coordinate inCells(Coordinate local) {
        Coordinate cells = map.cells(local);
        return new Coordinate(cells.x - window.column(), cells.y - window.row());
    }

    @Override
    public double spacing() {
        return map.spacing();
    }

    @Override
    public Envelope extent() {
        return extent.copy();
    }
}
