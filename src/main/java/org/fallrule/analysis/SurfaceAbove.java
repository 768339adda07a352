package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.Stationing;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;

/**
 * What lies on the ground at a place: a building, street, drive or walk, else lawn. Where one of these layers is not supplied a
 * place under none of the others is not known to be lawn.
 */
public final class SurfaceAbove {
    private static final List<Role> SURFACES = List.of(Role.BUILDING, Role.STREET, Role.DRIVE, Role.WALK);
    /** The surfaces whose absence from the plan leaves open whether a place is lawn. A street lies outside of the lot. */
    private static final List<Role> ON_THE_LOT = List.of(Role.DRIVE, Role.WALK);

    private final List<Area> areas = new ArrayList<>();

    /** The words of the layers that the plan leaves out, without which a place under none of the others may be no lawn. */
    private final List<String> notSupplied;

    /** What lies under none of the areas; asked for every node of the ground. */
    private final Optional<String> elsewhere;

    /** A feature that covers the ground, with what tells quickly whether a place lies on it, and its edges. */
    private record Area(Feature feature, Envelope box, PointOnGeometryLocator locator, List<Coordinate[]> edges) {
        static Area of(Feature feature) {
            return new Area(
                    feature,
                    feature.geometry().getEnvelopeInternal(),
                    new IndexedPointInAreaLocator(feature.geometry()),
                    Stationing.lines(feature.geometry()));
        }

        boolean covers(Coordinate place) {
            return box.contains(place) && locator.locate(place) != Location.EXTERIOR;
        }
    }

    public SurfaceAbove(Site site) {
        this.notSupplied = ON_THE_LOT.stream()
                .filter(role -> site.layer(role) instanceof Layer.NotSupplied)
                .map(Role::word)
                .toList();
        this.elsewhere = notSupplied.isEmpty() ? Optional.of("lawn") : Optional.empty();
        for (Role role : SURFACES) {
            site.features(role).forEach(area -> areas.add(Area.of(area)));
        }
    }

    /** The word for what lies at a place, or nothing when the plan leaves it open. */
    public Optional<String> at(Coordinate place) {
        return word(covering(place));
    }

    /** The building, street, drive or walk at a place, the first of these in this order. */
    Optional<Feature> covering(Coordinate place) {
        for (Area area : areas) {
            if (area.covers(place)) {
                return Optional.of(area.feature);
            }
        }
        return Optional.empty();
    }

    /** The word for what covers a place; for what none of these covers, lawn, or nothing when the plan leaves it open. */
    Optional<String> word(Optional<Feature> covering) {
        return covering.isPresent() ? covering.map(feature -> feature.role().word()) : elsewhere;
    }

    /** What would tell whether a place under none of these is lawn: the layers that the plan leaves out. */
    public String settledBy() {
        return notSupplied.size() == 1
                ? "supply the " + notSupplied.get(0) + " layer, or list " + notSupplied.get(0)
                        + " under absent in site.yaml if there is none"
                : "supply the " + String.join(" and ", notSupplied)
                        + " layers, or list them under absent in site.yaml if there are none";
    }

    /** The plan distances along a line, in metres from its start, where a surface's edge crosses it. */
    public List<Double> breaksAlong(LineString line) {
        Stationing stationing = new Stationing(line);
        List<Double> breaks = new ArrayList<>();
        for (Area area : areas) {
            if (area.box.intersects(line.getEnvelopeInternal())) {
                area.edges.forEach(edge -> breaks.addAll(stationing.where(edge)));
            }
        }
        return breaks;
    }
}
