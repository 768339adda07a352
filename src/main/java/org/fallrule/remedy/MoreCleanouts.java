package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fallrule.document.Place;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Cleanouts where the drain cannot be opened often enough: at the head of a pipe, evenly along it, or at its bends. */
final class MoreCleanouts implements Remedy {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final int MOST = 6;

    @Override
    public Set<String> checks() {
        return Set.of("cleanout_spacing", "bend_cleanout");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.run().map(run -> series(at, run)).orElse(List.of());
    }

    private static List<Series> series(Situation at, PipeRun run) {
        List<Series> series = new ArrayList<>();
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        if (at.isOf("bend_cleanout")) {
            for (int i = 0; i < run.axis().getNumPoints() - 1; i++) {
                double station = line.indexOf(run.axis().getCoordinateN(i));
                series.add(Series.single(() -> added(at, run, List.of(station))));
            }
        }
        series.add(new Series(MOST, steps -> added(at, run, stations(run, steps))));
        series.add(new Series(MOST, steps -> added(at, run, between(run, steps))));
        return series;
    }

    private static List<Double> stations(PipeRun run, int count) {
        double length = run.length().metres();
        return IntStream.range(0, count).mapToObj(i -> length * i / count).toList();
    }

    private static List<Double> between(PipeRun run, int count) {
        double length = run.length().metres();
        return IntStream.range(1, count + 1)
                .mapToObj(i -> length * i / (count + 1))
                .toList();
    }

    private static Optional<Change> added(Situation at, PipeRun run, List<Double> stations) {
        Edits edits = at.edits();
        int number = at.analysis().site().features(Role.CLEANOUT).size();
        for (double station : stations) {
            number = at.free(Role.CLEANOUT, "CO-", number + 1);
            edits.add(cleanout(at, "CO-" + number, new LengthIndexedLine(run.axis()).extractPoint(station)));
        }
        String where =
                stations.stream().map(station -> at.shown().station(station)).collect(Collectors.joining(" and "));
        String what = stations.size() == 1 ? "a cleanout" : stations.size() + " cleanouts";
        return Optional.of(new Change(edits.site(), what + " on " + run.pipe().spoken() + " at " + where));
    }

    private static Feature cleanout(Situation at, String id, Coordinate place) {
        Attributes attributes = at.analysis()
                .ground()
                .flatMap(ground -> ground.elevationAt(place))
                .map(level -> Attributes.none().with(Attribute.RIM, level))
                .orElse(Attributes.none());
        return new Feature(
                Role.CLEANOUT,
                id,
                GEOMETRY.createPoint(new Coordinate(place.x, place.y)),
                attributes.with(Attribute.ID, id),
                Place.of("cleanout.geojson").feature(id));
    }
}
