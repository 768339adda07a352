package org.fallrule.terrain.flow;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;

/** The ground of a grid with every hollow filled to where it spills over, so that water runs off from everywhere. */
public final class FilledGround {
    private final GroundGrid grid;
    private final Flood flood;
    private final List<Pond> ponds;
    private final int[] pondOf;

    private FilledGround(GroundGrid grid) {
        this.grid = grid;
        this.flood = new Flood(grid, node -> false);
        PondFinder finder = new PondFinder(grid, flood);
        this.ponds = List.copyOf(finder.ponds());
        this.pondOf = finder.pondOf();
    }

    public static FilledGround of(GroundGrid grid) {
        return new FilledGround(grid);
    }

    GroundGrid grid() {
        return grid;
    }

    /** The level at a node, NaN in holes. */
    double level(int node) {
        return flood.level(node);
    }

    /** The neighbour on the way out, of the same level or a lower one; negative on the rim. */
    int next(int node) {
        return flood.next(node);
    }

    /**
     * The flood that also drains at some nodes. It is this ground's own unless one of them lies under water or on level ground:
     * elsewhere a node at its own height takes in what comes to it and changes no level.
     *
     * @param drains above 0 at these nodes
     */
    Flood drainedAt(int[] drains) {
        for (int node = 0; node < drains.length; node++) {
            if (drains[node] > 0 && !runsOff(node)) {
                return new Flood(grid, drain -> drains[drain] > 0);
            }
        }
        return flood;
    }

    private boolean runsOff(int node) {
        return level(node) == grid.height(node) && (next(node) < 0 || level(next(node)) < level(node));
    }

    /** The ponds, lowest level first. Hollows as shallow as rounding of heights are among them; see {@link Pond#depth}. */
    public List<Pond> ponds() {
        return ponds;
    }

    /** The pond whose cells hold a place. */
    public Optional<Pond> pondAt(Coordinate place) {
        return grid.nodeAt(place).filter(node -> pondOf[node] > 0).map(node -> ponds.get(pondOf[node] - 1));
    }

    /** The level of water, or of dry ground, at a place; bilinear between nodes; empty outside and beside holes. */
    public Optional<Elevation> levelAt(Coordinate place) {
        double level = levelInCells(grid.inCells(place));
        return Double.isNaN(level) ? Optional.empty() : Optional.of(new Elevation(level));
    }

    /** The level in metres at a place in columns and rows; NaN outside and beside holes. */
    double levelInCells(Coordinate cells) {
        int column = (int) Math.max(0, Math.min(Math.floor(cells.x), grid.columns() - 2.0));
        int row = (int) Math.max(0, Math.min(Math.floor(cells.y), grid.rows() - 2.0));
        double u = cells.x - column;
        double v = cells.y - row;
        if (!(u >= 0 && u <= 1 && v >= 0 && v <= 1) || grid.columns() < 2 || grid.rows() < 2) {
            return Double.NaN;
        }
        double lower = mix(level(grid.node(column, row)), level(grid.node(column + 1, row)), u);
        double upper = mix(level(grid.node(column, row + 1)), level(grid.node(column + 1, row + 1)), u);
        return mix(lower, upper, v);
    }

    /** In a form that gives equal heights exactly, so that water is level. Off a hole by nothing when its share is none. */
    private static double mix(double one, double other, double share) {
        return share == 0 ? one : share == 1 ? other : one + (other - one) * share;
    }
}
