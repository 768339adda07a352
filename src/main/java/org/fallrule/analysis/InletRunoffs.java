package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.hydrology.CompositeRunoff;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.locality.Locality;
import org.fallrule.locality.OverlandTime;
import org.fallrule.locality.Setting;
import org.fallrule.locality.Stated;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.terrain.flow.ContributingArea;

/**
 * Works out what runs off to each inlet. A drainage area that the plan draws for an inlet counts; without one, the ground that
 * drains to it, or its share of a roof. The time over the ground is the one that the drawn area gives, else by the method that the book names under
 * storm: overland;
 * of a roof it is none, so that the storm's shortest duration counts.
 */
final class InletRunoffs {
    /** Where no book says how: the method that needs no figure of the place. */
    private static final OverlandTime BY_COEFFICIENT =
            new OverlandTime(OverlandTime.By.FAA_TIME, Optional.empty(), Optional.empty());

    private final Locality locality;
    private final DrawnAreas drawn;
    private final Map<Feature, InletCatchments.Catchment> catchments;
    private final Function<Feature, Optional<String>> soilAt;
    private final SurfaceAbove above;

    InletRunoffs(
            Locality locality,
            DrawnAreas drawn,
            Map<Feature, InletCatchments.Catchment> catchments,
            Function<Feature, Optional<String>> soilAt,
            SurfaceAbove above) {
        this.locality = locality;
        this.drawn = drawn;
        this.catchments = catchments;
        this.soilAt = soilAt;
        this.above = above;
    }

    /** What runs off to an inlet, or what is missing to tell. */
    Answer<InletRunoff> of(Feature inlet) {
        List<Feature> areas = drawn.of(inlet);
        if (!areas.isEmpty()) {
            return ofDrawn(inlet, areas);
        }
        if (inlet.get(Attribute.KIND).isEmpty()) {
            return Answer.none("the kind of " + inlet.spoken() + " is not given");
        }
        InletCatchments.Catchment catchment = catchments.get(inlet);
        if (catchment == null) {
            return Answer.none(
                    inlet.get(Attribute.KIND).orElseThrow().equals("downspout")
                            ? "no building is given that " + inlet.spoken() + " could drain"
                            : "no ground is given that could drain to " + inlet.spoken()
                                    + "; give spot elevations around it, or a drainage_area that drains to it");
        }
        return ofGround(inlet, catchment);
    }

    private Answer<InletRunoff> ofGround(Feature inlet, InletCatchments.Catchment catchment) {
        List<InletRunoff.Part> parts = new ArrayList<>();
        String why = addParts(inlet, catchment.surfaces(), catchment.farthest(), parts);
        if (!why.isEmpty()) {
            return Answer.none(why);
        }
        if (parts.isEmpty()) {
            return Answer.none("no area drains to " + inlet.spoken() + " over the ground given; give a drainage_area"
                    + " that drains to it if water is led there");
        }
        return composite(parts).map(runoff -> {
            Overland overland = overland(runoff.coefficient(), catchment.farthest());
            return new InletRunoff(parts, runoff, catchment.farthest(), overland.time, overland.by, catchment.isCut());
        });
    }

    private Answer<InletRunoff> ofDrawn(Feature inlet, List<Feature> areas) {
        List<InletRunoff.Part> parts = new ArrayList<>();
        Optional<ContributingArea.FlowWay> farthest = Optional.empty();
        for (Feature area : areas) {
            Optional<ContributingArea.FlowWay> way = drawn.farthest(area, inlet);
            String why = addParts(inlet, area, way, parts);
            if (!why.isEmpty()) {
                return Answer.none(why);
            }
            farthest = longer(farthest, way);
        }
        Optional<ContributingArea.FlowWay> longest = farthest;
        return composite(parts).map(runoff -> {
            Overland overland = given(areas).orElseGet(() -> overland(runoff.coefficient(), longest));
            return new InletRunoff(parts, runoff, longest, overland.time, overland.by, false);
        });
    }

    private static Optional<ContributingArea.FlowWay> longer(
            Optional<ContributingArea.FlowWay> one, Optional<ContributingArea.FlowWay> other) {
        boolean isOther = other.isPresent()
                && (one.isEmpty()
                        || other.get().length().metres() > one.get().length().metres());
        return isOther ? other : one;
    }

    /** Adds the parts of a drawn area; says what is missing, nothing when nothing is. */
    private String addParts(
            Feature inlet, Feature area, Optional<ContributingArea.FlowWay> way, List<InletRunoff.Part> parts) {
        Area whole = new Area(area.geometry().getArea());
        Optional<Ratio> given = area.get(Attribute.RUNOFF_COEFFICIENT);
        if (given.isPresent()) {
            parts.add(new InletRunoff.Part(
                    area.get(Attribute.SURFACE).orElse("all"), whole, given.get(), "given by " + area.spoken()));
            return "";
        }
        Map<String, Area> surfaces =
                area.get(Attribute.SURFACE).map(word -> Map.of(word, whole)).orElseGet(() -> drawn.surfaces(area));
        return addParts(inlet, surfaces, way, parts);
    }

    private String addParts(
            Feature inlet,
            Map<String, Area> surfaces,
            Optional<ContributingArea.FlowWay> way,
            List<InletRunoff.Part> parts) {
        Setting setting = new Setting(
                soilAt.apply(inlet),
                way.flatMap(InletRunoffs::slope),
                locality.storm().returnPeriod().map(Stated::value));
        for (Map.Entry<String, Area> surface : surfaces.entrySet()) {
            if (surface.getKey().equals(InletCatchments.UNKNOWN)) {
                return "what covers the ground that drains to " + inlet.spoken() + " is not known; "
                        + above.settledBy();
            }
            Answer<Stated<Ratio>> coefficient = locality.runoff().coefficient(surface.getKey(), setting);
            if (coefficient.value().isEmpty()) {
                return coefficient.why();
            }
            Stated<Ratio> stated = coefficient.value().get();
            parts.add(new InletRunoff.Part(
                    surface.getKey(),
                    surface.getValue(),
                    stated.value(),
                    stated.setBy().fileAndLine()));
        }
        return "";
    }

    private static Answer<CompositeRunoff> composite(List<InletRunoff.Part> parts) {
        return CompositeRunoff.of(parts.stream()
                .map(part -> new CompositeRunoff.Part(part.area(), part.coefficient()))
                .toList());
    }

    /** A time over the ground and what it rests on. */
    private record Overland(Time time, String by) {}

    private static Optional<Overland> given(List<Feature> areas) {
        return areas.stream()
                .filter(area -> area.get(Attribute.CONCENTRATION_TIME).isPresent())
                .map(area ->
                        new Overland(area.get(Attribute.CONCENTRATION_TIME).orElseThrow(), "given by " + area.spoken()))
                .max((one, other) -> Double.compare(one.time.seconds(), other.time.seconds()));
    }

    private Overland overland(Ratio coefficient, Optional<ContributingArea.FlowWay> way) {
        if (way.isEmpty()) {
            return new Overland(new Time(0), "no way over the ground; the shortest duration counts");
        }
        OverlandTime how = locality.storm().overland().orElse(BY_COEFFICIENT);
        Answer<Time> time = slope(way.get())
                .map(slope -> new OverlandWay(way.get().length(), slope, coefficient))
                .map(over -> DesignStorm.of(locality.storm()).then(storm -> over.time(how, storm)))
                .orElseGet(() -> Answer.none("the flow path does not fall"));
        return time.value()
                .map(found -> new Overland(found, how.by().word()))
                .orElseGet(() -> new Overland(
                        new Time(0), time.why() + "; the shortest duration counts, which asks for the most"));
    }

    private static Optional<Slope> slope(ContributingArea.FlowWay way) {
        return Optional.of(way)
                .filter(found -> found.length().metres() > 0)
                .map(found -> new Slope(found.fall().metres() / found.length().metres()))
                .filter(slope -> slope.ratio() > Dimension.SLOPE.tolerance());
    }
}
