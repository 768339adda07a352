package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.measure.Area;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.flow.ContributingArea;
import org.fallrule.terrain.flow.GroundGrid;

/**
 * The areas that drain to each inlet: over the ground to a basin or trench drain ({@link ContributingArea}), and from the roof
 * to a downspout.
 *
 * <p>A roof is taken as its building's footprint, and each downspout as draining an equal share of the building that it stands
 * nearest to; the plan knows no ridges or gutters. The ground under a building is interpolated and counts as ground.
 */
public final class InletCatchments {
    /** Water that comes so near to a basin goes into it. */
    private static final Length TAKEN_IN = Length.feet(1);

    private InletCatchments() {}

    /**
     * What drains to one inlet.
     *
     * @param overGround the area that drains to it over the ground; empty for a downspout, and where there is no ground
     * @param isCut whether that area reaches the edge of the known ground, beyond which more may drain here
     * @param ofRoof its share of a roof; empty for all but downspouts, and where there is no building
     */
    public record Catchment(Optional<Area> overGround, boolean isCut, Optional<Area> ofRoof) {}

    /** The catchment of each inlet whose kind the plan gives; worked out once for everything that asks. */
    public static Map<Feature, Catchment> of(SiteAnalysis analysis) {
        return analysis.flow().catchments();
    }

    static Map<Feature, Catchment> of(Site site, Optional<GroundGrid> ground) {
        Map<Feature, Catchment> catchments = new LinkedHashMap<>();
        Map<Boolean, List<Feature>> inlets = site.features(Role.INLET).stream()
                .filter(inlet -> inlet.get(Attribute.KIND).isPresent())
                .collect(Collectors.partitioningBy(
                        inlet -> inlet.get(Attribute.KIND).orElseThrow().equals("downspout")));
        ground.ifPresent(grid -> overGround(grid, inlets.getOrDefault(false, List.of()), catchments));
        ofRoofs(site, inlets.getOrDefault(true, List.of()), catchments);
        return Collections.unmodifiableMap(catchments);
    }

    private static void overGround(GroundGrid grid, List<Feature> basins, Map<Feature, Catchment> catchments) {
        List<ContributingArea> areas = ContributingArea.of(
                grid,
                basins.stream().map(basin -> basin.geometry().getCoordinate()).toList(),
                TAKEN_IN);
        for (int i = 0; i < basins.size(); i++) {
            ContributingArea area = areas.get(i);
            catchments.put(basins.get(i), new Catchment(Optional.of(area.area()), area.isCut(), Optional.empty()));
        }
    }

    private static void ofRoofs(Site site, List<Feature> downspouts, Map<Feature, Catchment> catchments) {
        List<Feature> buildings = site.features(Role.BUILDING);
        Map<Feature, List<Feature>> byBuilding = new LinkedHashMap<>();
        for (Feature downspout : downspouts) {
            buildings.stream()
                    .min(Comparator.comparingDouble(
                            building -> building.geometry().distance(downspout.geometry())))
                    .ifPresent(nearest -> byBuilding
                            .computeIfAbsent(nearest, any -> new ArrayList<>())
                            .add(downspout));
        }
        byBuilding.forEach((building, itsOwn) -> {
            Area share = new Area(building.geometry().getArea() / itsOwn.size());
            itsOwn.forEach(
                    downspout -> catchments.put(downspout, new Catchment(Optional.empty(), false, Optional.of(share))));
        });
    }
}
