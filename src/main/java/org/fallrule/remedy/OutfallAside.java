package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/** Moves the outfall with the end of its pipe; it stands to the ground there as it did, where the ground is known. */
final class OutfallAside implements Remedy {
    private static final int MOST = 50;

    @Override
    public Set<String> checks() {
        return Set.of("clearance", "within", "outside", "not_joined");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.lastOrJoined()
                .filter(last -> last.down().isOutfall())
                .map(last -> IntStream.range(0, Shown.DIRECTIONS)
                        .mapToObj(direction -> new Series(MOST, steps -> moved(at, last, direction, steps))
                                .first(
                                        at.isOf("not_joined")
                                                ? 1
                                                : at.stepsShort(at.shown().asideStep())))
                        .toList())
                .orElse(List.of());
    }

    private static Optional<Change> moved(Situation at, PipeRun last, int direction, int steps) {
        double by = steps * at.shown().asideStep();
        double angle = 2 * Math.PI * direction / Shown.DIRECTIONS;
        double east = by * Math.cos(angle);
        double north = by * Math.sin(angle);
        Coordinate was = last.down().place();
        Coordinate to = new Coordinate(was.x + east, was.y + north);
        Edits edits = at.edits();
        Optional<Elevation> invert = Daylight.invertAt(at.analysis(), last, to).or(last::invertDown);
        last.invertUp().ifPresent(up -> invert.ifPresent(low -> edits.level(last, up, low)));
        edits.move(last.down(), east, north);
        Feature outfall = last.down().structure(Role.OUTFALL).orElseThrow();
        return Optional.of(new Change(
                edits.site(),
                "move " + outfall.spoken() + " " + at.shown().plan(by) + " to the " + Shown.wind(direction)));
    }
}
