package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Passes under or over a utility: breaks the grade of the pipe at the crossing, lower or higher there than it was. */
final class BrokenGrade implements Remedy {
    private static final int MOST = 300;

    @Override
    public Set<String> checks() {
        return Set.of("separation");
    }

    @Override
    public List<Series> series(Situation at) {
        if (!at.measured().startsWith("height")) {
            return List.of();
        }
        return at.run()
                .filter(run -> run.fall().isPresent())
                .flatMap(run -> at.finding()
                        .observation()
                        .where()
                        .map(where -> Stream.of(-1, 1)
                                .map(way -> series(at, run, where.getCoordinate(), way))
                                .toList()))
                .orElse(List.of());
    }

    private static Series series(Situation at, PipeRun run, Coordinate crossing, int way) {
        return new Series(MOST, steps -> {
                    double by = steps * at.shown().heightStep();
                    return broken(at, run, new LengthIndexedLine(run.axis()).project(crossing), way * by);
                })
                .first(at.stepsShort(at.shown().heightStep()));
    }

    private static Optional<Change> broken(Situation at, PipeRun run, double station, double by) {
        double length = run.length().metres();
        if (station < 1 || length - station < 1) {
            return Optional.empty();
        }
        double up = run.invertUp().orElseThrow().metres();
        double down = run.invertDown().orElseThrow().metres();
        Parting parting = new Parting(at, run, station);
        double there = parting.invert().metres() + by;
        Edits edits = parting.made(new Elevation(there), kept -> kept);
        String passes = (by < 0 ? "pass under " : "pass over ")
                + at.finding().observation().other().map(Feature::spoken).orElse("it");
        return Optional.of(new Change(
                edits.site(),
                passes + ": " + (by < 0 ? "lower" : "raise") + " the pipe by "
                        + at.shown().height(Math.abs(by)) + " at " + at.shown().station(station)
                        + ", where its grade breaks from " + Shown.slope((up - there) / station) + " to "
                        + Shown.slope((there - down) / (length - station))));
    }
}
