package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * Turns the last pipe to an outfall at another place of the lot, at the ground there, the nearest place first. More steps do not
 * do more, as water that is led past one thing may run to the next; so every place is tried.
 */
final class OutfallElsewhere implements Remedy {
    /** How far away it is looked for, in steps aside: 1 ft to 48 ft, or 0.2 m to 9.6 m. */
    private static final int[] AWAY = {2, 6, 12, 24, 48, 96};

    /** Less fall, as a slope, drains no pipe that is laid by hand; common practice. */
    private static final double LEAST_FALL = 0.005;

    @Override
    public Set<String> checks() {
        return Set.of("flow_path", "not_joined");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.lastOrJoined().map(last -> places(at, last)).orElse(List.of());
    }

    @Override
    public int mostProofs() {
        return 32;
    }

    private static List<Series> places(Situation at, PipeRun last) {
        List<Series> places = new ArrayList<>();
        for (int away : AWAY) {
            for (int direction = 0; direction < Shown.DIRECTIONS; direction += 2) {
                double angle = 2 * Math.PI * direction / Shown.DIRECTIONS;
                double by = away * at.shown().asideStep();
                Coordinate from = last.down().place();
                Coordinate to = new Coordinate(from.x + by * Math.cos(angle), from.y + by * Math.sin(angle));
                String where = at.shown().plan(by) + " to the " + Shown.wind(direction);
                led(at, last, to, where).ifPresent(change -> places.add(Series.single(() -> Optional.of(change))));
            }
        }
        return places;
    }

    private static Optional<Change> led(Situation at, PipeRun last, Coordinate to, String where) {
        boolean isOwn = at.analysis()
                .site()
                .ownLot()
                .map(lot -> lot.geometry().intersects(Edits.GEOMETRY.createPoint(to)))
                .orElse(false);
        Optional<Elevation> up = last.invertUp();
        Optional<Elevation> down = isOwn ? invert(at, last, to) : Optional.empty();
        LineString axis = turned(last, to);
        if (up.isEmpty()
                || down.isEmpty()
                || axis.getLength() < EarlierEnd.SHORTEST
                || up.get().above(down.get()).metres() < LEAST_FALL * axis.getLength()) {
            return Optional.empty();
        }
        Edits edits = at.edits();
        edits.level(last, up.get(), down.get());
        edits.axis(last, Straight.asDrawn(last, axis, up.get(), down.get()));
        Optional<Feature> outfall = last.down().structure(Role.OUTFALL);
        outfall.ifPresentOrElse(each -> edits.move(each, to), () -> edits.add(added(at, to)));
        String slope = Shown.slope(up.get().above(down.get()).metres() / axis.getLength());
        return Optional.of(new Change(
                edits.site(),
                "turn " + last.pipe().spoken() + " to "
                        + outfall.map(Feature::spoken).orElse("an outfall in the open") + " at a place " + where
                        + " of its end, slope " + slope));
    }

    /** Of an outfall that is open in the submitted plan as it stands to the ground there; else at the ground. */
    private static Optional<Elevation> invert(Situation at, PipeRun last, Coordinate to) {
        Optional<Elevation> ground = at.analysis().ground().flatMap(surface -> surface.elevationAt(to));
        return at.isOf("not_joined") ? ground : Daylight.invertAt(at.analysis(), last, to);
    }

    /** The pipe's line with its last piece led to another place. */
    private static LineString turned(PipeRun last, Coordinate to) {
        Coordinate[] places = last.axis().copy().getCoordinates();
        places[places.length - 1] = new Coordinate(to.x, to.y, places[places.length - 1].getZ());
        return Edits.GEOMETRY.createLineString(places);
    }

    private static Feature added(Situation at, Coordinate to) {
        String id = "OF-" + at.free(Role.OUTFALL, "OF-", 1);
        return new Feature(
                Role.OUTFALL,
                id,
                Edits.GEOMETRY.createPoint(new Coordinate(to.x, to.y)),
                Attributes.none().with(Attribute.ID, id).with(Attribute.KIND, "daylight"),
                Place.of("outfall.geojson").feature(id));
    }
}
