package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.site.Attribute;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Where a branch can join a drain within reach of a place: by a wye of 45 degrees, or through the wall of a basin. */
final class Joins implements LineSearch.Ends<Joins.Join> {
    private static final int DIRECTIONS = 8;
    /** A basin takes a pipe in that comes so near to its middle, in metres. */
    private static final double STRAIGHT = 0.05;

    private static final double WYE = Math.toRadians(45.5);

    private final Field field;
    private final Lattice lattice;
    private final Coordinate inlet;
    private final Drain drain;
    private final Grades grades;
    private final double reach;
    private final List<Piece> pieces;

    /** A straight piece of a reach, which ends at that vertex of it. */
    private record Piece(Drain.Reach reach, int number, LineSegment line) {}

    /** @param grades those of the drain so far */
    Joins(Field field, Lattice lattice, Coordinate inlet, Drain drain, Grades grades) {
        this.field = field;
        this.lattice = lattice;
        this.inlet = inlet;
        this.drain = drain;
        this.grades = grades;
        this.reach = 3 * lattice.spacing();
        this.pieces =
                drain.reaches().stream().flatMap(each -> pieces(each).stream()).toList();
    }

    /** Where a branch joins. */
    sealed interface Join {
        /** At a place there is, a basin. */
        record At(int place) implements Join {}

        /** On a straight piece of a reach, which ends at that vertex of it. */
        record On(Drain.Reach reach, int piece, Coordinate place) implements Join {}
    }

    @Override
    public List<LineSearch.Last<Join>> from(Coordinate place, int direction, double level) {
        List<LineSearch.Last<Join>> ends = new ArrayList<>();
        intoBasins(place, direction, level, ends);
        if (distance(place) > reach) {
            return ends;
        }
        for (int on = 0; on < DIRECTIONS; on++) {
            if (LineSearch.mayTurn(direction, on)) {
                double turn = direction == DIRECTIONS ? 0 : Lattice.turn(direction, on) * field.fitting();
                onPipe(place, on, level, turn, ends);
            }
        }
        return ends;
    }

    /** From a place to the nearest reach, in metres. */
    double distance(Coordinate place) {
        double nearest = Double.MAX_VALUE;
        for (Piece piece : pieces) {
            nearest = Math.min(nearest, piece.line.distance(place));
        }
        return nearest;
    }

    private static List<Piece> pieces(Drain.Reach reach) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i < reach.axis().size(); i++) {
            pieces.add(new Piece(
                    reach,
                    i,
                    new LineSegment(reach.axis().get(i - 1), reach.axis().get(i))));
        }
        return pieces;
    }

    private void intoBasins(Coordinate place, int direction, double level, List<LineSearch.Last<Join>> ends) {
        for (int at = 0; at < drain.places().size(); at++) {
            Drain.Node node = drain.places().get(at);
            double length = node.place().distance(place);
            boolean isBasin = node.inlet()
                    .filter(each -> !each.get(Attribute.KIND).orElse("").equals("downspout"))
                    .isPresent();
            if (isBasin && length <= reach && length > 0) {
                into(at, place, direction, level, ends);
            }
        }
    }

    /** On in the direction that the line has, and by one bend of 45 degrees or none straight into the basin. */
    private void into(int basin, Coordinate from, int direction, double level, List<LineSearch.Last<Join>> ends) {
        Coordinate to = drain.places().get(basin).place();
        for (int first = 0; first < DIRECTIONS; first++) {
            for (int turn = -1; turn <= 1; turn++) {
                boolean goesOn = LineSearch.mayTurn(direction, first);
                Optional<Coordinate> bend =
                        goesOn ? bend(from, first, to, Math.floorMod(first + turn, DIRECTIONS)) : Optional.empty();
                double fittings = (direction == DIRECTIONS ? 0 : Lattice.turn(direction, first)) + Math.abs(turn);
                bend.ifPresent(at -> add(
                        from,
                        List.of(at, to),
                        level,
                        fittings * field.fitting(),
                        grades.level(basin),
                        new Join.At(basin),
                        ends));
            }
        }
    }

    /** Where a line from one place in one direction has to bend to come to another in a second direction. */
    private Optional<Coordinate> bend(Coordinate from, int first, Coordinate to, int second) {
        LineSegment ahead = new LineSegment(from, lattice.along(from, first, reach));
        LineSegment back = new LineSegment(to, lattice.along(to, Math.floorMod(second + 4, DIRECTIONS), reach));
        if (first == second) {
            boolean isStraight = ahead.distance(to) < STRAIGHT;
            return isStraight ? Optional.of(ahead.pointAlong(ahead.projectionFactor(to) / 2)) : Optional.empty();
        }
        return Optional.ofNullable(ahead.intersection(back));
    }

    private static double turned(LineSegment one, LineSegment other) {
        double angle = Math.abs(one.angle() - other.angle());
        return Math.min(angle, 2 * Math.PI - angle);
    }

    private void onPipe(Coordinate from, int direction, double level, double turn, List<LineSearch.Last<Join>> ends) {
        LineSegment ray = new LineSegment(from, lattice.along(from, direction, reach));
        Optional<Join.On> nearest = Optional.empty();
        for (Piece piece : pieces) {
            Coordinate met = piece.line.intersection(ray);
            if (met != null
                    && (nearest.isEmpty()
                            || met.distance(from) < nearest.get().place().distance(from))) {
                nearest = Optional.of(new Join.On(piece.reach, piece.number, met));
            }
        }
        nearest.filter(join -> fits(join, ray))
                .ifPresent(join -> add(
                        from, List.of(join.place()), level, turn + field.fitting(), grades.level(join), join, ends));
    }

    /** A wye needs a straight piece of pipe before and after it, and takes the branch in with the flow. */
    private boolean fits(Join.On join, LineSegment ray) {
        LineSegment piece = pieces(join.reach()).get(join.piece() - 1).line;
        double room = lattice.spacing() / 2;
        return turned(piece, ray) <= WYE
                && turned(piece, ray) > 1e-3
                && join.place().distance(piece.p0) >= room
                && join.place().distance(piece.p1) >= room
                && join.place().distance(ray.p0) > room;
    }

    private void add(
            Coordinate from,
            List<Coordinate> way,
            double level,
            double extra,
            Grades.Range there,
            Join join,
            List<LineSearch.Last<Join>> ends) {
        double length = 0;
        double cost = extra;
        Coordinate at = from;
        for (Coordinate next : way) {
            if (!field.isOpen(at, next, inlet)) {
                return;
            }
            cost += field.cost(at, next);
            length += at.distance(next);
            at = next;
        }
        double invert = level - field.heights().leastSlope() * length;
        if (invert >= there.least()) {
            double depth = field.heights().ground(from).orElseThrow() - level;
            double lowering = Math.max(0, there.level() - invert) * there.below();
            double deeper = Math.max(0, field.trenchPerMetre(lowering) - field.trenchPerMetre(0));
            ends.add(new LineSearch.Last<>(way, cost + field.trenchPerMetre(depth) * length + deeper, join));
        }
    }
}
