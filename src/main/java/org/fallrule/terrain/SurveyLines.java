package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;

/**
 * Contours and breaklines as straight pieces that meet only at their ends. Where two lines cross, their heights there are
 * interpolated along each and the mean is taken. Ends within a millimetre of each other or of a line are joined.
 */
final class SurveyLines {
    private static final double JOIN = 0.001;

    private final List<SegmentString> lines = new ArrayList<>();

    SurveyLines(List<Feature> contours, List<Feature> breaklines) {
        contours.forEach(contour -> add(contour, true));
        breaklines.forEach(breakline -> add(breakline, false));
    }

    private void add(Feature feature, boolean isContour) {
        for (Object part : LinearComponentExtracter.getLines(feature.geometry())) {
            lines.add(new BasicSegmentString(((LineString) part).getCoordinates(), isContour));
        }
    }

    /** The pieces, their ends taken into the points; those of contours are put into a list of their own as well. */
    List<Edge> edges(SurveyPoints points, List<Edge> ofContours) {
        Set<Edge> edges = new LinkedHashSet<>();
        Set<Edge> contours = new LinkedHashSet<>();
        for (SegmentString line : noded()) {
            Coordinate last = null;
            for (Coordinate place : line.getCoordinates()) {
                Coordinate point = points.take(place);
                if (last != null && !last.equals2D(point)) {
                    Edge edge = new Edge(last, point);
                    edges.add(edge);
                    if (line.getData() == Boolean.TRUE) {
                        contours.add(edge);
                    }
                }
                last = point;
            }
        }
        ofContours.addAll(contours);
        return List.copyOf(edges);
    }

    @SuppressWarnings("unchecked") // JTS gives a bare collection
    private Collection<SegmentString> noded() {
        if (lines.isEmpty()) {
            return List.of();
        }
        SnappingNoder noder = new SnappingNoder(JOIN);
        noder.computeNodes(lines);
        return noder.getNodedSubstrings();
    }
}
