package org.fallrule.check.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.SurfaceAbove;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.site.Feature;
import org.fallrule.terrain.flow.DownhillPath;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * The way over the finished ground of the water that comes out at a place.
 *
 * @param line from there to where the surveyed ground ends; Z is the level of ground or water
 */
record Discharge(LineString line) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    /** The way from an outfall; nothing where the ground at it is not known. */
    static Optional<Discharge> from(Feature outfall, SiteAnalysis analysis) {
        return analysis.flow()
                .filled()
                .flatMap(ground -> DownhillPath.from(outfall.geometry().getCoordinate(), ground))
                .map(path -> new Discharge(path.line()));
    }

    double length() {
        return line.getLength();
    }

    /** How many metres it runs before it first comes to an area; nothing when it does not. */
    Optional<Double> reaches(Geometry area) {
        Envelope reach = area.getEnvelopeInternal();
        if (!line.getEnvelopeInternal().intersects(reach)) {
            return Optional.empty();
        }
        PreparedGeometry prepared = PreparedGeometryFactory.prepare(area);
        double run = 0;
        for (int i = 1; i < line.getNumPoints(); i++) {
            Coordinate from = line.getCoordinateN(i - 1);
            Coordinate to = line.getCoordinateN(i);
            if (reach.intersects(from, to)) {
                LineString step = GEOMETRY.createLineString(new Coordinate[] {from, to});
                if (prepared.intersects(step)) {
                    return Optional.of(run + GEOMETRY.createPoint(from).distance(step.intersection(area)));
                }
            }
            run += from.distance(to);
        }
        return Optional.empty();
    }

    /** Its first so many metres. */
    LineString upTo(double metres) {
        return new LengthIndexedLine(line).extractLine(0, metres) instanceof LineString start ? start : line;
    }

    Coordinate at(double metres) {
        return new LengthIndexedLine(line).extractPoint(metres);
    }

    /** What its first so many metres run over, and how steeply: {@code over lawn, walk, falling 2.10 %}. */
    String spoken(double metres, SurfaceAbove surfaces) {
        List<String> words = new ArrayList<>();
        TreeSet<Double> cuts = new TreeSet<>(surfaces.breaksAlong(line));
        cuts.removeIf(cut -> cut >= metres);
        cuts.add(metres);
        double from = 0;
        for (double to : cuts) {
            if (to - from > Dimension.LENGTH.tolerance()) {
                surfaces.at(at((from + to) / 2))
                        .filter(word -> words.isEmpty() || !word.equals(words.get(words.size() - 1)))
                        .ifPresent(words::add);
                from = to;
            }
        }
        String over = words.isEmpty() ? "" : "over " + String.join(", ", words);
        double fall = line.getCoordinateN(0).getZ() - at(metres).getZ();
        if (metres <= Dimension.LENGTH.tolerance() || Double.isNaN(fall)) {
            return over;
        }
        String slope = "falling " + Printed.of(new Slope(fall / metres), Unit.PERCENT);
        return over.isEmpty() ? slope : over + ", " + slope;
    }
}
