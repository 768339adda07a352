package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/**
 * A drain with bends of 22.5 degrees where they take the place of those of 45 and make the pipe shorter, fitting for fitting.
 *
 * <p>A jog, where a line bends by 45 degrees and straight back, is laid at half the angle about its own middle: one of length L
 * takes L / 2 of the pipe before it and after it. The first bend from an inlet, and the last before an outfall or a basin, is
 * halved by setting out in the direction between: a first piece of length L takes L of the next. Where a reach begins or
 * ends at a wye it keeps its direction.
 */
final class EasedBends {
    private static final double BEND = Math.PI / 4;

    /** In radians; a bend that is off by less is one of its kind. */
    private static final double SAME = Math.toRadians(0.5);

    private final Drain drain;
    private final Field field;
    private final double room;

    private EasedBends(Drain drain, Field field, double room) {
        this.drain = drain;
        this.field = field;
        this.room = room;
    }

    /**
     * The drain with its bends eased where there is room and ground for it.
     *
     * @param room how much straight pipe is left beside a fitting, and how far pipes stay apart, in metres
     */
    static Drain of(Drain drain, Field field, double room) {
        Drain eased = drain;
        for (int i = 0; i < drain.reaches().size(); i++) {
            EasedBends bends = new EasedBends(eased, field, room);
            Drain.Reach reach = eased.reaches().get(i);
            List<Drain.Reach> reaches = new ArrayList<>(eased.reaches());
            reaches.set(i, new Drain.Reach(reach.up(), reach.down(), bends.eased(reach)));
            eased = new Drain(eased.places(), reaches);
        }
        return eased;
    }

    private List<Coordinate> eased(Drain.Reach reach) {
        List<Coordinate> axis = new ArrayList<>(reach.axis());
        if (isFree(reach.up())) {
            easeFirst(axis, reach);
        }
        if (isFree(reach.down())) {
            Collections.reverse(axis);
            easeFirst(axis, reach);
            Collections.reverse(axis);
        }
        for (int i = 1; i + 2 < axis.size(); i++) {
            easeJog(axis, i, reach);
        }
        return axis;
    }

    /** Whether a pipe may come to a place from any side. */
    private boolean isFree(int place) {
        return place == drain.outfall() || drain.places().get(place).inlet().isPresent();
    }

    private void easeFirst(List<Coordinate> axis, Drain.Reach reach) {
        if (axis.size() < 3 || Math.abs(Math.abs(turn(axis.get(0), axis.get(1), axis.get(2))) - BEND) > SAME) {
            return;
        }
        double taken = axis.get(0).distance(axis.get(1));
        if (axis.get(1).distance(axis.get(2)) - taken >= room) {
            Coordinate bend = toward(axis.get(1), axis.get(2), taken);
            LineSegment gentle = new LineSegment(axis.get(0), bend);
            double was = field.cost(axis.get(0), axis.get(1)) + field.cost(axis.get(1), bend);
            if (isOpen(gentle, reach) && field.cost(gentle.p0, gentle.p1) < was) {
                axis.set(1, bend);
            }
        }
    }

    private void easeJog(List<Coordinate> axis, int i, Drain.Reach reach) {
        if (!isJog(axis, i)) {
            return;
        }
        Coordinate before = axis.get(i - 1);
        Coordinate after = axis.get(i + 2);
        LineSegment jog = new LineSegment(axis.get(i), axis.get(i + 1));
        double taken = jog.getLength() / 2;
        if (Math.min(before.distance(jog.p0), after.distance(jog.p1)) - taken >= room) {
            LineSegment gentle = new LineSegment(toward(jog.p0, before, taken), toward(jog.p1, after, taken));
            double was = field.cost(gentle.p0, jog.p0) + field.cost(jog.p0, jog.p1) + field.cost(jog.p1, gentle.p1);
            if (isOpen(gentle, reach) && field.cost(gentle.p0, gentle.p1) < was) {
                axis.set(i, gentle.p0);
                axis.set(i + 1, gentle.p1);
            }
        }
    }

    /** Whether the piece after a vertex is bent into and straight back out of by 45 degrees. */
    private static boolean isJog(List<Coordinate> axis, int i) {
        double in = turn(axis.get(i - 1), axis.get(i), axis.get(i + 1));
        double out = turn(axis.get(i), axis.get(i + 1), axis.get(i + 2));
        return Math.abs(Math.abs(in) - BEND) < SAME && Math.abs(in + out) < SAME;
    }

    /** To the left where it is positive. */
    private static double turn(Coordinate from, Coordinate at, Coordinate to) {
        return Angle.normalize(Angle.angle(at, to) - Angle.angle(from, at));
    }

    private static Coordinate toward(Coordinate from, Coordinate to, double metres) {
        return new LineSegment(from, to).pointAlong(metres / from.distance(to));
    }

    private boolean isOpen(LineSegment piece, Drain.Reach reach) {
        return field.isOpen(piece.p0, piece.p1, reach.axis().get(0))
                && drain.reaches().stream()
                        .filter(other -> !other.equals(reach))
                        .noneMatch(other -> isNear(piece, other));
    }

    /** Whether it comes near to another reach, but for a basin or inlet where both end. */
    private boolean isNear(LineSegment piece, Drain.Reach other) {
        List<Coordinate> axis = other.axis();
        for (int i = 1; i < axis.size(); i++) {
            LineSegment line = new LineSegment(axis.get(i - 1), axis.get(i));
            boolean meets =
                    Stream.of(line.p0, line.p1).anyMatch(end -> end.equals2D(piece.p0) || end.equals2D(piece.p1));
            if (meets ? isAlong(piece, line) : piece.distance(line) < room) {
                return true;
            }
        }
        return false;
    }

    /** Whether two pieces that end at one place leave it in nearly one direction. */
    private static boolean isAlong(LineSegment one, LineSegment other) {
        Coordinate at = one.p0.equals2D(other.p0) || one.p0.equals2D(other.p1) ? one.p0 : one.p1;
        Coordinate first = at.equals2D(one.p0) ? one.p1 : one.p0;
        Coordinate second = at.equals2D(other.p0) ? other.p1 : other.p0;
        return Angle.angleBetween(first, at, second) < BEND - SAME;
    }
}
