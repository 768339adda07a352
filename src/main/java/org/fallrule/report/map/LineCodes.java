package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The letters that stand along a utility and tell its kind without colour. */
final class LineCodes {
    static final double FONT_PX = 10.5;

    /** The usual way from one code to the next along a line, in pixels. */
    private static final double SPACING = 105;

    /** Where a code is tried, in pixels along the line from where it should stand. */
    private static final double[] SHIFTS = {0, 9, -9, 18, -18, 30, -30, 42, -42};

    /** A code in its place, turned so that it reads along the line and never upside down. */
    record Code(Look look, Coordinate place, double degrees) {}

    private final LabelPlacer placer;
    private final List<Code> all = new ArrayList<>();

    LineCodes(Drawing drawing, Viewport viewport, LabelPlacer placer) {
        this.placer = placer;
        Clip shown = new Clip(viewport.sheet());
        drawing.shapes(Shape.Line.class)
                .filter(line -> !line.look().ink().code().isEmpty())
                .forEach(line -> write(line.look(), shown.of(viewport.px(line.path()))));
    }

    List<Code> all() {
        return all;
    }

    private void write(Look look, Geometry path) {
        double size = TextWidth.of(look.ink().code(), FONT_PX) + 5;
        for (int i = 0; i < path.getNumGeometries(); i++) {
            Geometry part = path.getGeometryN(i);
            double length = part.getLength();
            int wanted = length < 1.5 * size ? 0 : (int) Math.max(1, Math.round(length / SPACING));
            for (int k = 0; k < wanted; k++) {
                tryAround((k + 0.5) * length / wanted, size, look, new LengthIndexedLine(part));
            }
        }
    }

    private void tryAround(double wanted, double size, Look look, LengthIndexedLine line) {
        for (double shift : SHIFTS) {
            double station = wanted + shift;
            if (station < size / 2 || station > line.getEndIndex() - size / 2) {
                continue;
            }
            Coordinate place = line.extractPoint(station);
            Envelope box = new Envelope(place);
            box.expandBy(size / 2, Math.max(size, FONT_PX) / 2);
            if (placer.place(Stream.of(box)).isPresent()) {
                all.add(new Code(look, place, degreesAt(line, station)));
                return;
            }
        }
    }

    private static double degreesAt(LengthIndexedLine line, double station) {
        Coordinate before = line.extractPoint(Math.max(0, station - 4));
        Coordinate after = line.extractPoint(Math.min(line.getEndIndex(), station + 4));
        double degrees = Math.toDegrees(Math.atan2(after.y - before.y, after.x - before.x));
        return degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
    }
}
