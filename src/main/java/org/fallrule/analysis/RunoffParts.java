package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.locality.Locality;
import org.fallrule.locality.Setting;
import org.fallrule.locality.Stated;
import org.fallrule.measure.Area;
import org.fallrule.measure.Ratio;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.terrain.flow.ContributingArea;

/** The parts of an inlet's area, each with how much of the rain runs off it and who says so. */
final class RunoffParts {
    private final Locality locality;
    private final DrawnAreas drawn;
    private final Function<Feature, Optional<String>> soilAt;

    RunoffParts(Locality locality, DrawnAreas drawn, Function<Feature, Optional<String>> soilAt) {
        this.locality = locality;
        this.drawn = drawn;
        this.soilAt = soilAt;
    }

    /**
     * The parts of a drainage area that the plan draws, or what is missing to tell.
     *
     * @param way the farthest way of its water
     */
    Answer<List<InletRunoff.Part>> ofDrawn(Feature inlet, Feature area, Optional<ContributingArea.FlowWay> way) {
        Area whole = new Area(area.geometry().getArea());
        Optional<String> surface = area.get(Attribute.SURFACE);
        return area.get(Attribute.RUNOFF_COEFFICIENT)
                .map(given -> Answer.of(List.of(
                        new InletRunoff.Part(surface.orElse("all"), whole, given, "given by " + area.spoken()))))
                .orElseGet(() ->
                        of(inlet, surface.map(word -> Map.of(word, whole)).orElseGet(() -> drawn.surfaces(area)), way));
    }

    /** The parts of an area by what lies on it, or what is missing to tell. */
    Answer<List<InletRunoff.Part>> of(
            Feature inlet, Map<String, Area> surfaces, Optional<ContributingArea.FlowWay> way) {
        Setting setting = new Setting(
                soilAt.apply(inlet),
                way.flatMap(TimeOverGround::slope),
                locality.storm().returnPeriod().map(Stated::value));
        List<InletRunoff.Part> parts = new ArrayList<>();
        for (Map.Entry<String, Area> surface : surfaces.entrySet()) {
            if (surface.getKey().equals(InletCatchments.UNKNOWN)) {
                return Answer.none("what covers the ground that drains to " + inlet.spoken()
                        + " is not known; supply the layers " + Role.DRIVE.word() + " and " + Role.WALK.word()
                        + ", or list them under absent");
            }
            Answer<Stated<Ratio>> coefficient = locality.runoff().coefficient(surface.getKey(), setting);
            if (coefficient.value().isEmpty()) {
                return Answer.none(coefficient.why());
            }
            Stated<Ratio> stated = coefficient.value().get();
            parts.add(new InletRunoff.Part(
                    surface.getKey(),
                    surface.getValue(),
                    stated.value(),
                    stated.setBy().fileAndLine()));
        }
        return Answer.of(parts);
    }
}
