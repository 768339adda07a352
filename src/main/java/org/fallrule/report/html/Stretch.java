package org.fallrule.report.html;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.network.FlowLine;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * The part of a long section that a finding is about.
 *
 * @param section number of the section, from 1
 * @param from station in metres
 * @param to station in metres, not less
 */
record Stretch(int section, double from, double to) {
    /** How far in metres a place may lie from a pipe's axis and still be on the pipe: no house drain is thicker. */
    private static final double ON_PIPE = 0.3;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** The stretches of a finding about a part of the drain; none for one about anything else. */
    static List<Stretch> of(Finding finding, List<FlowLine> lines) {
        Observation seen = finding.observation();
        List<Feature> drain = Stream.of(seen.subject(), seen.other())
                .flatMap(Optional::stream)
                .filter(feature -> feature.role().isOfDrain())
                .toList();
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (FlowLine.Leg leg : lines.get(i).legs()) {
                int section = i + 1;
                drain.stream()
                        .flatMap(feature -> on(leg, feature, seen).stream())
                        .map(stations -> new Stretch(section, stations.getMin(), stations.getMax()))
                        .filter(stretch -> !stretches.contains(stretch))
                        .forEach(stretches::add);
            }
        }
        return stretches;
    }

    private static Optional<DoubleSummaryStatistics> on(FlowLine.Leg leg, Feature feature, Observation seen) {
        boolean isThisPipe = leg.run().pipe().equals(feature);
        if (!isThisPipe && feature.geometry().getDimension() > 0) {
            return Optional.empty();
        }
        Geometry place = isThisPipe ? seen.where().orElse(leg.run().axis()) : feature.geometry();
        DoubleSummaryStatistics stations = stations(leg, place);
        if (stations.getCount() == 0 && isThisPipe) {
            stations = stations(leg, leg.run().axis());
        }
        return Optional.of(stations).filter(found -> found.getCount() > 0);
    }

    /** The stations of those corners of a geometry that lie on a pipe. */
    private static DoubleSummaryStatistics stations(FlowLine.Leg leg, Geometry place) {
        PipeRun run = leg.run();
        LengthIndexedLine axis = new LengthIndexedLine(run.axis());
        return Arrays.stream(place.getCoordinates())
                .filter(corner -> point(corner).isWithinDistance(run.axis(), ON_PIPE))
                .mapToDouble(corner -> leg.start() + axis.project(corner))
                .summaryStatistics();
    }

    private static Geometry point(Coordinate corner) {
        return GEOMETRY.createPoint(corner);
    }

    /** {@code 2:3.05-7.62}. */
    String written() {
        return String.format(Locale.ROOT, "%d:%.2f-%.2f", section, from, to);
    }
}
