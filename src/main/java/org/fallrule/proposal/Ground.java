package org.fallrule.proposal;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;

/** The finished ground, looked up once for each place. */
final class Ground {
    private final SiteAnalysis analysis;
    private final Map<Coordinate, Optional<Double>> levels = new HashMap<>();

    Ground(SiteAnalysis analysis) {
        this.analysis = analysis;
    }

    /** The ground in metres; nothing where it is not known. */
    Optional<Double> at(Coordinate place) {
        return levels.computeIfAbsent(
                place,
                where -> analysis.ground()
                        .flatMap(surface -> surface.elevationAt(where))
                        .map(Elevation::metres));
    }
}
