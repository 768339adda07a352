package org.fallrule.check.utility;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The joints of a pipe near a crossing, and how far in plan they keep from the utility's outside. */
final class Joints {
    private final PipeAndUtility pair;
    private final LengthIndexedLine axis;
    private final double length;
    private final double crossing;

    Joints(PipeAndUtility pair, UtilityCrossing crossing) {
        this.pair = pair;
        this.axis = new LengthIndexedLine(pair.run().axis());
        this.length = pair.run().axis().getLength();
        this.crossing = crossing.station();
    }

    /** Of the joints that there are whatever lengths the pipe comes in: its ends and bends. */
    Length fixed() {
        LineString line = pair.run().axis();
        List<Coordinate> places = new ArrayList<>(List.of(line.getCoordinateN(0)));
        for (int i = 1; i < line.getNumPoints() - 1; i++) {
            if (turn(line, i) > Dimension.ANGLE.tolerance()) {
                places.add(line.getCoordinateN(i));
            }
        }
        places.add(line.getCoordinateN(line.getNumPoints() - 1));
        return nearest(places);
    }

    private static double turn(LineString line, int at) {
        return Math.PI
                - Angle.angleBetween(line.getCoordinateN(at - 1), line.getCoordinateN(at), line.getCoordinateN(at + 1));
    }

    /** Of the two ends of a piece whose middle lies on the crossing; where the pipe is shorter its own ends count. */
    Length centred(Length piece) {
        double half = piece.metres() / 2;
        return nearest(List.of(
                axis.extractPoint(Math.max(0, crossing - half)), axis.extractPoint(Math.min(length, crossing + half))));
    }

    /** Of the joints before and after the crossing where whole pieces are laid from the upstream end. */
    Length laidFromUpstream(Length piece) {
        double before = Math.floor(crossing / piece.metres()) * piece.metres();
        return nearest(
                List.of(axis.extractPoint(before), axis.extractPoint(Math.min(length, before + piece.metres()))));
    }

    private Length nearest(List<Coordinate> places) {
        double nearest = places.stream()
                .mapToDouble(place -> pair.utility()
                        .geometry()
                        .distance(pair.run().axis().getFactory().createPoint(place)))
                .min()
                .orElse(0);
        return new Length(nearest - pair.size().metres() / 2);
    }
}
