package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.hydrology.CompositeRunoff;
import org.fallrule.locality.Locality;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.terrain.flow.ContributingArea;

/**
 * Works out what runs off to each inlet. A drainage area that the plan draws for an inlet counts; without one, the ground that
 * drains to it, or its share of a roof. The time over the ground is the one that the drawn area gives, else that of the
 * farthest way ({@link TimeOverGround}); of a roof it is none, so that the storm's shortest duration counts.
 */
final class InletRunoffs {
    private final Locality locality;
    private final DrawnAreas drawn;
    private final Map<Feature, InletCatchments.Catchment> catchments;
    private final RunoffParts parts;

    InletRunoffs(
            Locality locality,
            DrawnAreas drawn,
            Map<Feature, InletCatchments.Catchment> catchments,
            Function<Feature, Optional<String>> soilAt,
            SurfaceAbove above) {
        this.locality = locality;
        this.drawn = drawn;
        this.catchments = catchments;
        this.parts = new RunoffParts(locality, drawn, soilAt, above);
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
        return parts.of(inlet, catchment.surfaces(), catchment.farthest())
                .then(found -> found.isEmpty()
                        ? Answer.none("no area drains to " + inlet.spoken() + " over the ground given; give a"
                                + " drainage_area that drains to it if water is led there")
                        : made(found, catchment.farthest(), Optional.empty(), catchment.isCut()));
    }

    private Answer<InletRunoff> ofDrawn(Feature inlet, List<Feature> areas) {
        List<InletRunoff.Part> all = new ArrayList<>();
        Optional<ContributingArea.FlowWay> farthest = Optional.empty();
        for (Feature area : areas) {
            Optional<ContributingArea.FlowWay> way = drawn.farthest(area, inlet);
            Answer<List<InletRunoff.Part>> of = parts.ofDrawn(inlet, area, way);
            if (of.value().isEmpty()) {
                return Answer.none(of.why());
            }
            all.addAll(of.value().get());
            farthest = longer(farthest, way);
        }
        return made(all, farthest, TimeOverGround.given(areas), false);
    }

    private static Optional<ContributingArea.FlowWay> longer(
            Optional<ContributingArea.FlowWay> one, Optional<ContributingArea.FlowWay> other) {
        boolean isOther = other.isPresent()
                && (one.isEmpty()
                        || other.get().length().metres() > one.get().length().metres());
        return isOther ? other : one;
    }

    private Answer<InletRunoff> made(
            List<InletRunoff.Part> of,
            Optional<ContributingArea.FlowWay> way,
            Optional<TimeOverGround> given,
            boolean isCut) {
        List<CompositeRunoff.Part> areas = of.stream()
                .map(part -> new CompositeRunoff.Part(part.area(), part.coefficient()))
                .toList();
        return CompositeRunoff.of(areas).map(runoff -> {
            TimeOverGround over =
                    given.orElseGet(() -> TimeOverGround.along(way, runoff.coefficient(), locality.storm()));
            return new InletRunoff(of, runoff, way, over.time(), over.by(), isCut);
        });
    }
}
