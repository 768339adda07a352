package org.fallrule.terrain.flow;

import java.util.Arrays;
import java.util.Optional;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Water standing in a hollow up to where it spills over. Its places are nodes of the grid, so up to half a cell's diagonal
 * off in plan; the grid cannot see a gap in the rim narrower than a cell, and takes such a pond for deeper than it is.
 */
public final class Pond {
    private final GroundGrid grid;
    private final int[] nodes;
    private final int lowest;
    private final int spill;
    private final double level;
    private Optional<Geometry> outline = Optional.empty();

    Pond(GroundGrid grid, int[] nodes, int spill, double level) {
        this.grid = grid;
        this.nodes = nodes;
        this.spill = spill;
        this.level = level;
        int low = nodes[0];
        for (int node : nodes) {
            low = grid.height(node) < grid.height(low) ? node : low;
        }
        this.lowest = low;
    }

    /** The lowest place of its bed, with Z. */
    public Coordinate lowest() {
        Coordinate place = grid.place(lowest);
        place.setZ(grid.height(lowest));
        return place;
    }

    /** Where it spills over, with Z at the level of the water. */
    public Coordinate spill() {
        Coordinate place = grid.place(spill);
        place.setZ(level);
        return place;
    }

    /** The water's level when it spills. */
    public Elevation level() {
        return new Elevation(level);
    }

    /** The level's height above the lowest place. */
    public Length depth() {
        return new Length(level - grid.height(lowest));
    }

    /** The cells under water. Along the shore cells count whole or not: off by half a cell's side times the shore at most. */
    public Area area() {
        return new Area(nodes.length * grid.spacing() * grid.spacing());
    }

    /** The volume of water, by cells: depth at each node times the cell's area. */
    public double cubicMetres() {
        double depths = 0;
        for (int node : nodes) {
            depths += level - grid.height(node);
        }
        return depths * grid.spacing() * grid.spacing();
    }

    /** The cells whose bed lies no more than so much above its lowest place, as polygons; made anew at each call. */
    public Geometry bottom(Length asLow) {
        double upTo = grid.height(lowest) + asLow.metres() + Dimension.LENGTH.tolerance();
        return CellOutline.of(
                grid,
                Arrays.stream(nodes).filter(node -> grid.height(node) <= upTo).toArray());
    }

    /** The cells under water as polygons; made when first asked for. */
    public synchronized Geometry outline() {
        if (outline.isEmpty()) {
            outline = Optional.of(CellOutline.of(grid, nodes));
        }
        return outline.get();
    }
}
