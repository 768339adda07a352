package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The part of a plan that a view shows. */
public final class Clip {
    private final Envelope view;
    private final Geometry frame;

    public Clip(Envelope view) {
        this.view = view.copy();
        this.frame = new GeometryFactory().toGeometry(view);
    }

    /** A clip that reaches so much farther, as a share of the width, that the cut edges lie outside of the view. */
    Clip wider(double share) {
        Envelope wider = view.copy();
        wider.expandBy(share * view.getWidth());
        return new Clip(wider);
    }

    /** The part of a geometry of one kind, point, line or area, that lies in the view; lines keep their direction. */
    public Geometry of(Geometry geometry) {
        if (!view.intersects(geometry.getEnvelopeInternal())) {
            return geometry.getFactory().createEmpty(geometry.getDimension());
        }
        Geometry sound = geometry.getDimension() < 2 || geometry.isValid() ? geometry : GeometryFixer.fix(geometry);
        if (view.contains(geometry.getEnvelopeInternal())) {
            return sound;
        }
        Geometry cut = OverlayNGRobust.overlay(sound, frame, OverlayNG.INTERSECTION);
        return geometry instanceof LineString line ? alongside(line, cut) : cut;
    }

    /** Whether some of a line lies in the view. */
    boolean crosses(Geometry line) {
        return frame.intersects(line);
    }

    private static Geometry alongside(LineString line, Geometry cut) {
        LengthIndexedLine stations = new LengthIndexedLine(line);
        LineString[] parts = new LineString[cut.getNumGeometries()];
        for (int i = 0; i < parts.length; i++) {
            if (!(cut.getGeometryN(i) instanceof LineString part)) {
                return cut;
            }
            parts[i] = !part.isEmpty() && runsBack(stations, part) ? part.reverse() : part;
        }
        return parts.length == 1 ? parts[0] : line.getFactory().createMultiLineString(parts);
    }

    private static boolean runsBack(LengthIndexedLine stations, LineString part) {
        Coordinate first = part.getCoordinateN(0);
        Coordinate second = part.getCoordinateN(1);
        return stations.indexOf(second) < stations.indexOf(first);
    }
}
