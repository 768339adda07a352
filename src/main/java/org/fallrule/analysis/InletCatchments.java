package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.measure.Area;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.flow.ContributingArea;
import org.fallrule.terrain.flow.FilledGround;
import org.locationtech.jts.geom.Coordinate;

/**
 * The areas that drain to each inlet: over the ground to a basin or trench drain ({@link ContributingArea}), and from the roof
 * to a downspout.
 *
 * <p>A roof is taken as its building's footprint, and each downspout as draining an equal share of the building that it stands
 * nearest to; the plan knows no ridges or gutters. A roof with downspouts of its own drains to these and not over the ground;
 * any other drips onto the ground around it. The ground under a building is interpolated and counts as ground.
 */
public final class InletCatchments {
    /** Water that comes so near to a basin goes into it. */
    private static final Length TAKEN_IN = Length.feet(1);

    /** Stands for a surface that the plan leaves open. */
    public static final String UNKNOWN = "unknown";

    private final Site site;
    private final SurfaceAbove surfaces;
    private final Map<Feature, List<Feature>> downspoutsOf;
    private final List<Feature> basins;

    InletCatchments(Site site, SurfaceAbove surfaces) {
        this.site = site;
        this.surfaces = surfaces;
        Map<Boolean, List<Feature>> inlets = site.features(Role.INLET).stream()
                .filter(inlet -> inlet.get(Attribute.KIND).isPresent())
                .collect(Collectors.partitioningBy(
                        inlet -> inlet.get(Attribute.KIND).orElseThrow().equals("downspout")));
        this.basins = inlets.getOrDefault(false, List.of());
        this.downspoutsOf = byBuilding(inlets.getOrDefault(true, List.of()));
    }

    /**
     * What drains to one inlet.
     *
     * @param overGround the area that drains to it over the ground; empty for a downspout, and where there is no ground
     * @param isCut whether that area reaches the edge of the known ground, beyond which more may drain here
     * @param ofRoof its share of a roof; empty for all but downspouts, and where there is no building
     * @param surfaces the area by what lies on it: {@code lawn}, {@code roof}, {@code drive}, {@link #UNKNOWN}
     * @param farthest the longest way over the ground to it; empty for a roof
     */
    public record Catchment(
            Optional<Area> overGround,
            boolean isCut,
            Optional<Area> ofRoof,
            Map<String, Area> surfaces,
            Optional<ContributingArea.FlowWay> farthest) {}

    /** The catchment of each inlet whose kind the plan gives; worked out once for everything that asks. */
    public static Map<Feature, Catchment> of(SiteAnalysis analysis) {
        return analysis.water().catchments();
    }

    Map<Feature, Catchment> over(Optional<FilledGround> ground) {
        Map<Feature, Catchment> catchments = new LinkedHashMap<>();
        ground.ifPresent(filled -> overGround(filled, catchments));
        downspoutsOf.forEach((building, downspouts) -> {
            Area share = new Area(building.geometry().getArea() / downspouts.size());
            downspouts.forEach(downspout -> catchments.put(downspout, ofRoof(share)));
        });
        return catchments;
    }

    /** The buildings whose roofs drain to downspouts of the plan, and not over the ground. */
    Set<Feature> guttered() {
        return downspoutsOf.keySet();
    }

    private static Catchment ofRoof(Area share) {
        return new Catchment(Optional.empty(), false, Optional.of(share), Map.of("roof", share), Optional.empty());
    }

    private void overGround(FilledGround ground, Map<Feature, Catchment> catchments) {
        List<Coordinate> places =
                basins.stream().map(basin -> basin.geometry().getCoordinate()).toList();
        List<ContributingArea> areas = ContributingArea.of(ground, places, TAKEN_IN, this::surfaceAt);
        for (int i = 0; i < basins.size(); i++) {
            ContributingArea area = areas.get(i);
            catchments.put(
                    basins.get(i),
                    new Catchment(
                            Optional.of(area.area()),
                            area.isCut(),
                            Optional.empty(),
                            area.byLabel(),
                            Optional.of(area.farthest())));
        }
    }

    /** The surface at a place; empty on a roof that drains to downspouts. */
    private Optional<String> surfaceAt(Coordinate place) {
        Optional<Feature> covering = surfaces.covering(place);
        return covering.filter(guttered()::contains).isPresent()
                ? Optional.empty()
                : Optional.of(
                        surfaces.word(covering).map(InletCatchments::runoffWord).orElse(UNKNOWN));
    }

    /** What rule books call a surface when they say how much of the rain runs off it. */
    static String runoffWord(String surface) {
        return surface.equals(Role.BUILDING.word()) ? "roof" : surface;
    }

    private Map<Feature, List<Feature>> byBuilding(List<Feature> downspouts) {
        Map<Feature, List<Feature>> byBuilding = new LinkedHashMap<>();
        for (Feature downspout : downspouts) {
            site.features(Role.BUILDING).stream()
                    .min(Comparator.comparingDouble(
                            building -> building.geometry().distance(downspout.geometry())))
                    .ifPresent(nearest -> byBuilding
                            .computeIfAbsent(nearest, any -> new ArrayList<>())
                            .add(downspout));
        }
        return byBuilding;
    }
}
