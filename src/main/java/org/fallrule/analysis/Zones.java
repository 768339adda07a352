package org.fallrule.analysis;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The zones around what stands in a plan. To make one costs much more than to look into it, so each is made once. */
public final class Zones {
    private final Map<Zone, Geometry> made = new ConcurrentHashMap<>();

    private record Zone(Geometry of, double metres, int arcSegments) {}

    /** Everything within so many metres of a geometry; of an area, where negative, what lies deeper inside. */
    public Geometry around(Geometry of, double metres) {
        return around(of, metres, BufferParameters.DEFAULT_QUADRANT_SEGMENTS);
    }

    /**
     * The same, as round as is asked.
     *
     * @param arcSegments straight pieces to a quarter circle
     */
    public Geometry around(Geometry of, double metres, int arcSegments) {
        return made.computeIfAbsent(
                new Zone(of, metres, arcSegments), zone -> zone.of.buffer(zone.metres, zone.arcSegments));
    }
}
