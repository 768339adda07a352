package org.fallrule.site;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Heights of the ground at the centres of a raster's cells, and between them by bilinear interpolation. */
public interface HeightField {

    /**
     * The height at a place of the local frame, between the four nearest cell centres bilinearly. Empty beyond the outermost
     * centres, and where a cell without a height would take part.
     */
    Optional<Elevation> heightAt(Coordinate local);

    /**
     * A place of the local frame counted in cells: x along a row, y along a column; whole numbers are cell centres. Raster rows
     * and columns need not run along the frame's axes.
     */
    Coordinate inCells(Coordinate local);

    /** The distance between neighbouring cell centres in metres, the mean of both directions. */
    double spacing();

    /** The box in the local frame around the outermost cell centres. */
    Envelope extent();
}
