package org.fallrule.remedy;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * Leads the last pipe on, under a walk that its water must not run over, to the curb of the nearest street. Counties make that
 * the standard, grant it by permit or forbid it; the rules on outfalls say which.
 */
final class CurbOutlet implements Remedy {
    /** Metres, about 50 ft; a street farther away is not the one that the outfall stands before. */
    private static final double FARTHEST = 15;

    @Override
    public Set<String> checks() {
        return Set.of("flow_path");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.last()
                .flatMap(last -> curb(at, last).map(to -> List.of(Series.single(() -> led(at, last, to)))))
                .orElse(List.of());
    }

    private static Optional<Coordinate> curb(Situation at, PipeRun last) {
        Point end = Edits.GEOMETRY.createPoint(last.down().place());
        return at.analysis().site().features(Role.STREET).stream()
                .map(street -> DistanceOp.nearestPoints(street.geometry(), end)[0])
                .filter(place -> place.distance(end.getCoordinate()) > EarlierEnd.SHORTEST)
                .filter(place -> place.distance(end.getCoordinate()) <= FARTHEST)
                .min(Comparator.comparingDouble(place -> place.distance(end.getCoordinate())));
    }

    private static Optional<Change> led(Situation at, PipeRun last, Coordinate to) {
        double more = last.down().place().distance(to);
        double length = last.length().metres() + more;
        Coordinate[] places =
                Arrays.copyOf(last.axis().copy().getCoordinates(), last.axis().getNumPoints() + 1);
        places[places.length - 1] = new Coordinate(to.x, to.y);
        LineString axis = Edits.GEOMETRY.createLineString(places);
        Optional<Elevation> up = last.invertUp();
        Optional<Elevation> down = Daylight.invertAt(at.analysis(), last, to)
                .or(() -> up.flatMap(high ->
                        last.slope().map(slope -> new Elevation(high.metres() - slope.ratio() * length))));
        return up.flatMap(high -> down.map(low -> {
            Edits edits = at.edits();
            edits.level(last, high, low);
            edits.axis(last, Straight.asDrawn(last, axis, high, low));
            Feature outfall = last.down().structure(Role.OUTFALL).orElseThrow();
            edits.move(outfall, to);
            edits.set(outfall, Attribute.KIND, "curb");
            return new Change(
                    edits.site(),
                    "lead " + last.pipe().spoken() + " " + at.shown().plan(more) + " on to the curb, "
                            + outfall.spoken()
                            + " a curb outlet there, slope "
                            + Shown.slope(high.above(low).metres() / length));
        }));
    }
}
