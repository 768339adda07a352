package org.fallrule.terrain.flow;

import org.fallrule.measure.Area;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Water standing in a hollow up to where it spills over. Lowest and spill place are nodes of the grid, so up to half a cell's diagonal
 * off in plan; the grid cannot see a gap in the rim narrower than a cell, and takes such a pond for deeper than it is.
 *
 * @param lowest the lowest place of its bed, with Z
 * @param spill where it spills over, with Z at the level of the water
 * @param level the water's level when it spills
 * @param depth the level's height above the lowest place
 * @param area the cells under water; along the shore cells count whole or not, so it is off by about half a cell's side times
 *     the root of the number of shore cells, at most by half a cell's side times the shore's length
 * @param cubicMetres the volume of water, by cells: depth at each node times the cell's area
 * @param outline the cells under water as polygons
 */
public record Pond(
        Coordinate lowest,
        Coordinate spill,
        Elevation level,
        Length depth,
        Area area,
        double cubicMetres,
        Geometry outline) {}
