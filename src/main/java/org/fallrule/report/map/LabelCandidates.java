package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Boxes in which a label of a given size may stand, the most wanted first. All in pixels of the sheet.
 *
 * @param width the label's width
 * @param height the label's height
 */
public record LabelCandidates(double width, double height) {
    /** Directions around a point as the eye likes them: right first, then left, above, below, then slanting. */
    private static final double[][] DIRECTIONS = {
        {1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {1, -0.5}, {1, 0.5}, {-1, -0.5}, {-1, 0.5}
    };

    private static final double[] ALONG = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9};
    private static final int GRID = 9;

    /** A place on a line, and the direction across it. */
    private record Stand(Coordinate place, double normalX, double normalY) {}

    /** Around a point, at each of the gaps between it and the label's edge. */
    public List<Envelope> around(Coordinate place, double... gaps) {
        List<Envelope> boxes = new ArrayList<>();
        for (double gap : gaps) {
            for (double[] toward : DIRECTIONS) {
                boxes.add(at(
                        place.x + toward[0] * (width / 2 + gap * slant(toward)),
                        place.y + toward[1] * (height / 2 + gap * slant(toward))));
            }
        }
        return boxes;
    }

    private static double slant(double[] toward) {
        return toward[0] != 0 && toward[1] != 0 ? 0.75 : 1;
    }

    /** On both sides of a line, at each of the gaps between it and the label's nearest corner. */
    public List<Envelope> beside(Geometry line, double... gaps) {
        List<Stand> stands = stands(new LengthIndexedLine(longest(line)));
        List<Envelope> boxes = new ArrayList<>();
        for (double gap : gaps) {
            stands.forEach(stand -> addBeside(boxes, stand, gap));
        }
        return boxes;
    }

    private static List<Stand> stands(LengthIndexedLine line) {
        List<Stand> stands = new ArrayList<>();
        double end = line.getEndIndex();
        for (double share : ALONG) {
            double station = share * end;
            Coordinate before = line.extractPoint(Math.max(0, station - 2));
            Coordinate after = line.extractPoint(Math.min(end, station + 2));
            double run = before.distance(after);
            if (run > 0) {
                stands.add(new Stand(
                        line.extractPoint(station), (after.y - before.y) / run, -((after.x - before.x) / run)));
            }
        }
        return stands;
    }

    private void addBeside(List<Envelope> boxes, Stand stand, double gap) {
        double reach = gap + Math.abs(stand.normalX) * width / 2 + Math.abs(stand.normalY) * height / 2;
        boxes.add(at(stand.place.x + stand.normalX * reach, stand.place.y + stand.normalY * reach));
        boxes.add(at(stand.place.x - stand.normalX * reach, stand.place.y - stand.normalY * reach));
    }

    /** The longest part of a line of one part or several. */
    static Geometry longest(Geometry lines) {
        Geometry longest = lines.getGeometryN(0);
        for (int i = 1; i < lines.getNumGeometries(); i++) {
            if (lines.getGeometryN(i).getLength() > longest.getLength()) {
                longest = lines.getGeometryN(i);
            }
        }
        return longest;
    }

    /** Wholly inside of an area, the nearest to its middle first; each looked at only when it is asked for. */
    Stream<Envelope> inside(Geometry area) {
        PreparedGeometry holder = PreparedGeometryFactory.prepare(area);
        Coordinate middle = area.getInteriorPoint().getCoordinate();
        Envelope extent = area.getEnvelopeInternal();
        List<Coordinate> centres = new ArrayList<>(List.of(middle));
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                centres.add(new Coordinate(
                        extent.getMinX() + extent.getWidth() * (i + 0.5) / GRID,
                        extent.getMinY() + extent.getHeight() * (j + 0.5) / GRID));
            }
        }
        centres.sort(Comparator.comparingDouble(middle::distance));
        return centres.stream()
                .map(centre -> at(centre.x, centre.y))
                .filter(box -> holder.covers(area.getFactory().toGeometry(box)));
    }

    private Envelope at(double x, double y) {
        return new Envelope(x - width / 2, x + width / 2, y - height / 2, y + height / 2);
    }
}
