package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Passes under or over a utility: breaks the grade of the pipe at the crossing, lower or higher there than it was. */
final class BrokenGrade implements Remedy {
    private static final int MOST = 300;

    @Override
    public List<Series> series(Situation at) {
        if (!at.isOf("separation") || !at.measured().startsWith("height")) {
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
        });
    }

    private static Optional<Change> broken(Situation at, PipeRun run, double station, double by) {
        double length = run.length().metres();
        if (station < 1 || length - station < 1) {
            return Optional.empty();
        }
        double up = run.invertUp().orElseThrow().metres();
        double down = run.invertDown().orElseThrow().metres();
        double there = up + (down - up) * station / length + by;
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        Edits edits = at.edits();
        edits.level(run, new Elevation(up), new Elevation(there));
        edits.axis(run, (LineString) line.extractLine(0, station));
        edits.add(lower(at, run.pipe(), (LineString) line.extractLine(station, length), there, down));
        String passes = (by < 0 ? "pass under " : "pass over ")
                + at.finding().observation().other().map(Feature::spoken).orElse("it");
        return Optional.of(new Change(
                edits.site(),
                passes + ": " + (by < 0 ? "lower" : "raise") + " the pipe by "
                        + at.shown().height(Math.abs(by)) + " at " + at.shown().station(station)
                        + ", where its grade breaks from " + Shown.slope((up - there) / station) + " to "
                        + Shown.slope((there - down) / (length - station))));
    }

    private static Feature lower(Situation at, Feature pipe, LineString line, double up, double down) {
        long parts = at.analysis().site().features(Role.PIPE).stream()
                .filter(each -> each.id().startsWith(pipe.id() + Subject.PART))
                .count();
        String id = pipe.id() + Subject.PART + (parts + 2);
        return new Feature(
                pipe.role(),
                id,
                line,
                pipe.attributes()
                        .with(Attribute.ID, id)
                        .with(Attribute.INVERT_UP, new Elevation(up))
                        .with(Attribute.INVERT_DOWN, new Elevation(down)),
                Place.of(pipe.origin().file()).feature(id));
    }
}
