package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Leads a pipe aside: its middle around something, its ends as they are, or all of it with the structures on its ends. */
final class PipeAside implements Remedy {
    private static final int MOST = 40;

    @Override
    public Set<String> checks() {
        return Set.of("separation", "clearance", "outside", "root_zone", "footing_plane", "not_joined");
    }

    @Override
    public List<Series> series(Situation at) {
        boolean beside = at.isOf("separation") && at.measured().contains("beside");
        if (!beside && at.isOf("separation")) {
            return List.of();
        }
        return at.subject(Role.PIPE)
                .flatMap(at.network()::runOf)
                .map(run -> Stream.of(
                                aside(at, run, steps -> around(at, run, steps)),
                                aside(at, run, steps -> around(at, run, -steps)),
                                new Series(MOST, steps -> whole(at, run, steps)),
                                new Series(MOST, steps -> whole(at, run, -steps)))
                        .map(series ->
                                beside ? series.first(at.stepsShort(at.shown().asideStep())) : series)
                        .toList())
                .orElse(List.of());
    }

    /** No farther than the bends it takes stay gentle. */
    private static Series aside(Situation at, PipeRun run, IntFunction<Optional<Change>> led) {
        return Series.within(MOST, run.length().metres() / 4, at.shown().asideStep(), led);
    }

    private static Optional<Change> around(Situation at, PipeRun run, int steps) {
        double by = steps * at.shown().asideStep();
        double length = run.length().metres();
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        Coordinate aside = normal(run);
        List<Coordinate> places = new ArrayList<>(List.of(run.axis().getCoordinateN(0)));
        for (double share : new double[] {0.25, 0.75}) {
            Coordinate place = line.extractPoint(length * share);
            places.add(new Coordinate(place.x + by * aside.x, place.y + by * aside.y));
        }
        places.add(run.axis().getCoordinateN(run.axis().getNumPoints() - 1));
        LineString drawn = run.axis().getFactory().createLineString(places.toArray(Coordinate[]::new));
        Edits edits = at.edits();
        edits.axis(run, raised(run, drawn));
        return Optional.of(new Change(
                edits.site(),
                "lead the middle half of " + run.pipe().spoken() + " "
                        + at.shown().plan(Math.abs(by)) + " farther to the " + wind(aside, by)));
    }

    private static LineString raised(PipeRun run, LineString drawn) {
        boolean hasHeights = Double.isFinite(run.axis().getCoordinate().getZ());
        return run.invertUp()
                .filter(up -> hasHeights)
                .flatMap(up -> run.invertDown().map(down -> Straight.between(drawn, up, down)))
                .orElse(drawn);
    }

    private static Optional<Change> whole(Situation at, PipeRun run, int steps) {
        double by = steps * at.shown().asideStep();
        Coordinate aside = normal(run);
        if (run.up().number() == run.down().number()) {
            return Optional.empty();
        }
        Edits edits = at.edits();
        edits.move(run.up(), by * aside.x, by * aside.y);
        edits.move(run.down(), by * aside.x, by * aside.y);
        return Optional.of(new Change(
                edits.site(),
                "move " + run.pipe().spoken() + " with what stands on its ends "
                        + at.shown().plan(Math.abs(by)) + " to the " + wind(aside, by)));
    }

    private static String wind(Coordinate aside, double by) {
        double way = Math.signum(by);
        return Shown.wind(way * aside.x, way * aside.y);
    }

    /** The direction square to the straight line between a pipe's ends, to the left of the flow. */
    private static Coordinate normal(PipeRun run) {
        Coordinate from = run.up().place();
        Coordinate to = run.down().place();
        double length = Math.max(from.distance(to), 1e-9);
        return new Coordinate((from.y - to.y) / length, (to.x - from.x) / length);
    }
}
