package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What lies on the ground at a place: a building, street, drive or walk, else lawn. Where one of these layers is not supplied a
 * place under none of the others is not known to be lawn.
 */
public final class SurfaceAbove {
    private static final List<Role> SURFACES = List.of(Role.BUILDING, Role.STREET, Role.DRIVE, Role.WALK);
    /** The surfaces whose absence from the plan leaves open whether a place is lawn. A street lies outside of the lot. */
    private static final List<Role> ON_THE_LOT = List.of(Role.DRIVE, Role.WALK);

    private final Site site;
    private final Map<PointOnGeometryLocator, Role> areas = new LinkedHashMap<>();

    public SurfaceAbove(Site site) {
        this.site = site;
        for (Role role : SURFACES) {
            for (Feature area : site.features(role)) {
                areas.put(new IndexedPointInAreaLocator(area.geometry()), role);
            }
        }
    }

    /** The word for what lies at a place, or nothing when the plan leaves it open. */
    public Optional<String> at(Coordinate place) {
        for (Map.Entry<PointOnGeometryLocator, Role> area : areas.entrySet()) {
            if (area.getKey().locate(place) != Location.EXTERIOR) {
                return Optional.of(area.getValue().word());
            }
        }
        boolean open = ON_THE_LOT.stream().anyMatch(role -> site.layer(role) instanceof Layer.NotSupplied);
        return open ? Optional.empty() : Optional.of("lawn");
    }

    /** Where an area's edge meets a line; an edge that crosses itself is no hindrance. */
    private static Geometry edgeOn(Feature area, LineString line) {
        return OverlayNGRobust.overlay(area.geometry().getBoundary(), line, OverlayNG.INTERSECTION);
    }

    /** The plan distances along a line, in metres from its start, where a surface's edge crosses it. */
    public List<Double> breaksAlong(LineString line) {
        LengthIndexedLine stations = new LengthIndexedLine(line);
        List<Double> breaks = new ArrayList<>();
        for (Role role : SURFACES) {
            for (Feature area : site.features(role)) {
                for (Coordinate crossing : edgeOn(area, line).getCoordinates()) {
                    breaks.add(stations.project(crossing));
                }
            }
        }
        return breaks;
    }
}
