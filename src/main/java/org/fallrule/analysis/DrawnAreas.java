package org.fallrule.analysis;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;
import org.fallrule.terrain.flow.ContributingArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The drainage areas that the plan draws: which inlet each drains to, what lies on it, and how far its water comes. */
final class DrawnAreas {
    private static final List<Role> COVERS = List.of(Role.BUILDING, Role.STREET, Role.DRIVE, Role.WALK);

    private final Site site;
    private final Set<Feature> guttered;
    private final Optional<GroundSurface> ground;
    private final boolean knowsLawn;
    private final DrainageAreas areas;

    /**
     * @param guttered the buildings whose roofs drain to downspouts
     * @param knowsLawn whether what nothing covers is known to be lawn
     */
    DrawnAreas(Site site, Set<Feature> guttered, Optional<GroundSurface> ground, boolean knowsLawn) {
        this.site = site;
        this.guttered = guttered;
        this.ground = ground;
        this.knowsLawn = knowsLawn;
        this.areas = new DrainageAreas(site);
    }

    /** The areas that drain to an inlet: those that name it, and those that name none and hold no other inlet. */
    List<Feature> of(Feature inlet) {
        return areas.of(inlet);
    }

    /** The plan area of each surface in a drainage area; roofs that drain to downspouts are left out. */
    Map<String, Area> surfaces(Feature area) {
        Map<String, Area> surfaces = new LinkedHashMap<>();
        Geometry left = area.geometry();
        for (Role role : COVERS) {
            for (Feature cover : site.features(role)) {
                if (!left.getEnvelopeInternal().intersects(cover.geometry().getEnvelopeInternal())) {
                    continue;
                }
                Geometry covered = left.intersection(cover.geometry());
                if (covered.getArea() > 0) {
                    left = left.difference(cover.geometry());
                    if (!guttered.contains(cover)) {
                        add(surfaces, InletCatchments.runoffWord(role.word()), covered.getArea());
                    }
                }
            }
        }
        if (left.getArea() > 0) {
            add(surfaces, knowsLawn ? "lawn" : InletCatchments.UNKNOWN, left.getArea());
        }
        return surfaces;
    }

    private static void add(Map<String, Area> surfaces, String word, double squareMetres) {
        surfaces.merge(word, new Area(squareMetres), (a, b) -> new Area(a.squareMetres() + b.squareMetres()));
    }

    /**
     * The straight way from the corner of an area that is farthest from its inlet, of several as far from the highest of them;
     * empty where the ground there is not known.
     */
    Optional<ContributingArea.FlowWay> farthest(Feature area, Feature inlet) {
        Coordinate to = inlet.geometry().getCoordinate();
        Coordinate[] corners = area.geometry().getCoordinates();
        double most = Stream.of(corners).mapToDouble(to::distance).max().orElse(0);
        Optional<Elevation> high = Stream.of(corners)
                .filter(corner -> to.distance(corner) >= most - Dimension.LENGTH.tolerance())
                .flatMap(corner -> elevation(corner).stream())
                .max(Comparator.comparingDouble(Elevation::metres));
        return elevation(to)
                .flatMap(low -> high.map(top -> new ContributingArea.FlowWay(new Length(most), top.above(low))));
    }

    private Optional<Elevation> elevation(Coordinate place) {
        return ground.flatMap(surface -> surface.elevationAt(place));
    }
}
