package org.fallrule.analysis;

import java.util.List;
import java.util.Optional;
import org.fallrule.network.NetworkBuilder;
import org.fallrule.network.PipeNetwork;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;
import org.fallrule.terrain.TriangulatedGround;
import org.locationtech.jts.geom.Coordinate;

/**
 * A plan and what follows from it; what every check looks at.
 *
 * @param site the plan
 * @param ground the ground, when the plan has spot elevations enough for one
 * @param network the drain
 */
public record SiteAnalysis(Site site, Optional<GroundSurface> ground, PipeNetwork network) {

    public static SiteAnalysis of(Site site) {
        List<Coordinate> spots = site.features(Role.SPOT).stream()
                .map(spot -> spot.geometry().getCoordinate())
                .filter(place -> Double.isFinite(place.getZ()))
                .toList();
        return new SiteAnalysis(site, TriangulatedGround.of(spots), NetworkBuilder.build(site));
    }
}
