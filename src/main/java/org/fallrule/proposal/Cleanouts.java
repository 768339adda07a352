package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fallrule.check.Selection;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Feature;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** Places for cleanouts: with the flow, the last bend or wye before the pipe would run farther or turn more than rules let it. */
final class Cleanouts {
    private final Drain drain;
    private final List<Selection> opened;
    private final double longest;
    private final double sharpest;
    private final double together;
    private final List<Coordinate> places = new ArrayList<>();
    private final Map<Integer, Since> at = new HashMap<>();

    /** How far the pipe has run and turned since it could last be opened. */
    private record Since(double length, double turned) {
        static final Since OPENED = new Since(0, 0);

        Since and(double more, double turn) {
            return new Since(length + more, turned + turn);
        }

        Since worse(Since other) {
            return new Since(Math.max(length, other.length), Math.max(turned, other.turned));
        }
    }

    private Cleanouts(Drain drain, LineRules rules, Feature pipe) {
        this.drain = drain;
        this.opened = Stream.of("cleanout_spacing", "bend_cleanout")
                .flatMap(rules::of)
                .flatMap(rule -> rule.selection("opened_at").stream())
                .toList();
        this.longest = rules.least("cleanout_spacing", "at_most", pipe);
        this.sharpest = rules.least("bend_cleanout", "bend_at_most", pipe);
        this.together = rules.least("bend_cleanout", "bends_together_at_most", pipe);
    }

    static List<Coordinate> of(Drain drain, LineRules rules, Feature pipe) {
        Cleanouts cleanouts = new Cleanouts(drain, rules, pipe);
        drain.inOrder().forEach(cleanouts::along);
        return List.copyOf(cleanouts.places);
    }

    private void along(Drain.Reach reach) {
        List<Coordinate> axis = reach.axis();
        Since since = isOpen(reach.up()) ? Since.OPENED : begun(reach);
        for (int i = 1; i < axis.size(); i++) {
            since = run(axis.get(i - 1), axis.get(i), since);
            if (i < axis.size() - 1) {
                since = turned(axis.get(i - 1), axis.get(i), axis.get(i + 1), since);
            }
        }
        at.merge(reach.down(), since, Since::worse);
    }

    /** Straight on; where that is farther than a cleanout serves, with one on the way. */
    private Since run(Coordinate from, Coordinate to, Since since) {
        double length = from.distance(to);
        if (since.length() + length <= longest + Dimension.LENGTH.tolerance()) {
            return since.and(length, 0);
        }
        if (since.length() > 0 && length <= longest) {
            places.add(from);
            return new Since(length, 0);
        }
        double on = longest - since.length();
        Coordinate place = new LineSegment(from, to).pointAlong(on / length);
        places.add(place);
        return run(place, to, Since.OPENED);
    }

    private Since turned(Coordinate from, Coordinate at, Coordinate to, Since since) {
        double turn = turn(from, at, to);
        if (isTooMuch(turn, since)) {
            places.add(at);
            return Since.OPENED;
        }
        return since.and(0, turn);
    }

    private boolean isTooMuch(double turn, Since since) {
        double tolerance = Dimension.ANGLE.tolerance();
        return turn > sharpest + tolerance || since.turned() + turn > together + tolerance;
    }

    private static double turn(Coordinate from, Coordinate at, Coordinate to) {
        return Math.abs(Angle.diff(Angle.angle(from, at), Angle.angle(at, to)));
    }

    /** What comes into a place from above, with the turn into the reach that leaves it. */
    private Since begun(Drain.Reach reach) {
        Since since = at.getOrDefault(reach.up(), Since.OPENED);
        double turn = 0;
        for (Drain.Reach before : drain.into(reach.up())) {
            List<Coordinate> axis = before.axis();
            turn = Math.max(
                    turn,
                    turn(
                            axis.get(axis.size() - 2),
                            axis.get(axis.size() - 1),
                            reach.axis().get(1)));
        }
        if (isTooMuch(turn, since)) {
            places.add(reach.axis().get(0));
            return Since.OPENED;
        }
        return since.and(0, turn);
    }

    private boolean isOpen(int place) {
        return drain.places()
                .get(place)
                .inlet()
                .filter(inlet ->
                        !opened.isEmpty() && opened.stream().allMatch(each -> each.chooses(inlet) == Truth.TRUE))
                .isPresent();
    }
}
