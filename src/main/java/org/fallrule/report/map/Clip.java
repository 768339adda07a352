package org.fallrule.report.map;

import org.geotools.geometry.jts.GeometryClipper;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The part of a plan that a view shows. Not for several threads. */
public final class Clip {
    private final Envelope view;
    private final Geometry frame;
    private final GeometryClipper scissors;

    public Clip(Envelope view) {
        this.view = view.copy();
        this.frame = new GeometryFactory().toGeometry(view);
        this.scissors = new GeometryClipper(this.view);
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
            return nothing(geometry);
        }
        if (view.contains(geometry.getEnvelopeInternal())) {
            return sound(geometry);
        }
        Geometry cut = scissors.clip(geometry, false);
        if (cut == null) {
            return nothing(geometry);
        }
        return isSound(cut) ? cut : OverlayNGRobust.overlay(sound(geometry), frame, OverlayNG.INTERSECTION);
    }

    /** Whether some of a line lies in the view. */
    boolean crosses(Geometry line) {
        return frame.intersects(line);
    }

    private static Geometry nothing(Geometry geometry) {
        return geometry.getFactory().createEmpty(geometry.getDimension());
    }

    private static Geometry sound(Geometry geometry) {
        return isSound(geometry) ? geometry : GeometryFixer.fix(geometry);
    }

    /** The quick cut leaves an area that comes into the view several times joined along the view's edge. */
    private static boolean isSound(Geometry geometry) {
        return geometry.getDimension() < 2 || geometry.isValid();
    }
}
