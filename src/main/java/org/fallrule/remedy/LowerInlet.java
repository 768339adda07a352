package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.Junction;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Brings an inlet to where the water gathers: moves it with its pipes toward the low place, or sets its grate lower. */
final class LowerInlet implements Remedy {
    private static final int MOST = 100;

    @Override
    public Set<String> checks() {
        return Set.of("low_point");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.subject(Role.INLET)
                .map(inlet -> List.of(
                        new Series(MOST, steps -> set(at, inlet, steps)),
                        Series.within(
                                MOST,
                                away(at) + at.shown().asideStep(),
                                at.shown().asideStep(),
                                steps -> moved(at, inlet, steps))))
                .orElse(List.of());
    }

    private static Optional<Change> set(Situation at, Feature inlet, int steps) {
        double by = steps * at.shown().heightStep();
        return inlet.get(Attribute.RIM)
                .map(rim -> new Change(
                        at.edits()
                                .set(inlet, Attribute.RIM, rim.minus(new Length(by)))
                                .site(),
                        "set the grate of " + inlet.spoken() + " " + at.shown().height(by) + " lower"));
    }

    /** Metres to the low place, where the finding shows it. */
    private static double away(Situation at) {
        return at.finding().observation().where().map(Geometry::getLength).orElse(0.0);
    }

    private static Optional<Change> moved(Situation at, Feature inlet, int steps) {
        Optional<Junction> junction = at.network().junctionOf(inlet);
        Optional<Coordinate[]> way = at.finding()
                .observation()
                .where()
                .map(where -> where.getCoordinates())
                .filter(places -> places.length == 2);
        if (junction.isEmpty() || way.isEmpty()) {
            return Optional.empty();
        }
        Coordinate from = way.get()[0];
        Coordinate to = way.get()[1];
        double length = from.distance(to);
        double by = steps * at.shown().asideStep();
        if (length <= 0) {
            return Optional.empty();
        }
        double east = (to.x - from.x) / length * by;
        double north = (to.y - from.y) / length * by;
        Edits edits = at.edits().move(junction.get(), east, north);
        ground(at, new Coordinate(from.x + east, from.y + north))
                .filter(level -> inlet.get(Attribute.RIM).isPresent())
                .ifPresent(level -> edits.set(inlet, Attribute.RIM, level));
        return Optional.of(new Change(
                edits.site(),
                "move " + inlet.spoken() + " " + at.shown().plan(by) + " to the " + Shown.wind(east, north)
                        + ", its grate at the ground there"));
    }

    private static Optional<Elevation> ground(Situation at, Coordinate place) {
        return at.analysis().ground().flatMap(surface -> surface.elevationAt(place));
    }
}
