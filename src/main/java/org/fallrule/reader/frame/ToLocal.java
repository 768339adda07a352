package org.fallrule.reader.frame;

import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The way from a layer's coordinates into the plan's frame.
 *
 * @param from the layer's coordinate reference system
 * @param frame the plan's frame
 */
public record ToLocal(CoordinateSystem from, LocalFrame frame) {
    /** Metres. At this distance lengths in the frame are off by 1.2e-4, and no lot is that large. */
    private static final double FARTHEST = 100_000;

    /**
     * A position in the frame; Z is kept as it is.
     *
     * @param where the file and feature, for the fault
     * @throws UnusableInput when the position is outside the coordinate reference system's area, or more than 100 km from the
     *     frame's origin
     */
    public Coordinate local(Coordinate position, Place where) {
        Coordinate lonLat = from.toLonLat(position, where);
        Coordinate local = frame.toLocal(lonLat);
        double distance = Math.hypot(local.x, local.y);
        if (!(distance <= FARTHEST)) {
            throw new UnusableInput(
                    where,
                    "the position " + Shown.xy(position) + " lies at " + Shown.lonLat(lonLat)
                            + ", more than 100 km from the rest of the plan; check the layer's crs (it is read as "
                            + from.name() + ")");
        }
        return local;
    }

    /**
     * A new geometry in the frame, from one in the layer's coordinates; Z and the factory are kept.
     *
     * @throws UnusableInput as for a position
     */
    public Geometry local(Geometry geometry, Place where) {
        return Moved.copy(geometry, position -> local(position, where));
    }
}
