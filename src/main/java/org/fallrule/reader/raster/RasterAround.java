package org.fallrule.reader.raster;

import java.util.Locale;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The part of a raster around a plan. */
final class RasterAround {
    /** Metres: below the shore of the Dead Sea, at about -430, and above Everest, 8,849. */
    private static final double LOWEST = -450;

    private static final double HIGHEST = 8900;

    /** Metres, half the way around the earth. */
    private static final double FARTHEST = 20_100_000;

    private final RasterFile raster;
    private final CoordinateSystem system;
    private final LocalFrame frame;
    private final Place where;
    private final CellMap map;
    private int offEarth;

    RasterAround(RasterFile raster, CoordinateSystem system, LocalFrame frame, Envelope around, Place where) {
        this.raster = raster;
        this.system = system;
        this.frame = frame;
        this.where = where;
        Envelope box = around.copy();
        box.expandBy(1);
        this.map = new CellMap(box, this::cells);
    }

    private Coordinate cells(Coordinate local) {
        Coordinate lonLat = frame.toLonLat(local);
        return system.fromLonLat(lonLat)
                .map(raster.placement()::cell)
                .filter(cell -> Double.isFinite(cell.x) && Double.isFinite(cell.y))
                .orElseThrow(() -> new UnusableInput(
                        where,
                        "its coordinate reference system (" + system.name()
                                + ") does not reach the plan; check the raster's crs"));
    }

    RasterHeights heights(double metresPerUnit) {
        CellWindow window = window();
        if (window.cells() > CellWindow.MOST_CELLS) {
            throw new UnusableInput(
                    where,
                    "has " + window.cells() + " cells around the plan, more than the " + CellWindow.MOST_CELLS
                            + " that are read; give a coarser raster");
        }
        double[] heights = raster.heights(window);
        int known = 0;
        for (int i = 0; i < heights.length; i++) {
            heights[i] = onEarth(heights[i] * metresPerUnit);
            known += Double.isNaN(heights[i]) ? 0 : 1;
        }
        refuseNone(known);
        return new RasterHeights(window, heights, map, extent(window));
    }

    /** The height itself, or NaN when it is one that no ground on earth has. */
    private double onEarth(double metres) {
        if (metres >= LOWEST && metres <= HIGHEST) {
            return metres;
        }
        offEarth += Double.isNaN(metres) ? 0 : 1;
        return Double.NaN;
    }

    private void refuseNone(int known) {
        if (known == 0) {
            throw new UnusableInput(
                    where,
                    "has no heights around the plan, only cells without data; give a raster that covers the plan's place");
        }
    }

    /** What is odd about the heights that were read. */
    Optional<Fault> note() {
        return offEarth == 0
                ? Optional.empty()
                : Optional.of(
                        new Fault(
                                where,
                                "has " + offEarth
                                        + " cells around the plan with heights that no ground has (such as -9999); they are"
                                        + " taken as cells without data; state that value as nodata in the file, or mend the unit"));
    }

    private CellWindow window() {
        Envelope all = new Envelope(0, raster.columns() - 1.0, 0, raster.rows() - 1.0);
        Envelope wanted = map.inCells();
        if (!all.intersects(wanted)) {
            double metres = all.distance(wanted) * map.spacing();
            throw new UnusableInput(
                    where,
                    String.format(
                            Locale.ROOT,
                            "lies %s the plan (it is read as %s); give a raster of the plan's place, or mend its crs",
                            distance(metres),
                            system.name()));
        }
        Envelope part = all.intersection(wanted);
        int column = (int) Math.floor(part.getMinX());
        int row = (int) Math.floor(part.getMinY());
        return new CellWindow(
                column, row, (int) Math.ceil(part.getMaxX()) - column + 1, (int) Math.ceil(part.getMaxY()) - row + 1);
    }

    private static String distance(double metres) {
        if (!(metres < FARTHEST)) {
            return "nowhere near";
        }
        return metres >= 10_000
                ? String.format(Locale.ROOT, "%.0f km away from", metres / 1000)
                : String.format(Locale.ROOT, "%.0f m (%.0f ft) away from", metres, metres / Unit.FOOT.toSi());
    }

    private Envelope extent(CellWindow window) {
        Envelope extent = new Envelope();
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                double column = window.column() + i * (window.columns() - 1.0);
                double row = window.row() + j * (window.rows() - 1.0);
                Coordinate lonLat = system.toLonLat(raster.placement().centre(column, row), where);
                extent.expandToInclude(frame.toLocal(lonLat));
            }
        }
        return extent;
    }
}
