package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.hydraulics.gradeline.NodeLevel;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.network.Junction;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** How far below each rim the water stands when the design storm runs through the drain. */
@AutoService(Check.class)
public final class GradeLineFreeboard implements Check {
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
                    "at_least",
                    Bound.AT_LEAST,
                    Dimension.LENGTH,
                    "least height of the rim above the water; 0 in where it may rise to the rim")
            .always();

    @Override
    public String name() {
        return "grade_line";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The height of the rim of each inlet and cleanout above the hydraulic grade line of the design flow; of the"
                        + " ground there where no rim is given.",
                "freeboard = rim - grade line; the grade line from the outfall up, with friction, exit, bend, entrance and"
                        + " structure losses (grade_line); a free outfall, or the tailwater that the plan gives, or the"
                        + " ground at a pop-up outfall, whose lid opens only when the water stands there",
                "HEC-22, third edition, section 7.1 and chapter 7: the grade line stays below the rim.",
                List.of(
                        "water that stands above a rim and runs off over the ground: the levels upstream are then too high",
                        "tailwater that the plan does not give",
                        "all flows at their peak at once, which seldom happens"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_LEAST);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.INLET), new Need.OfStorm());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return Stream.of(Role.INLET, Role.CLEANOUT)
                .flatMap(role -> analysis.site().features(role).stream())
                .flatMap(structure -> analysis
                        .network()
                        .junctionOf(structure)
                        .filter(junction -> analysis.network().leaving(junction).isPresent())
                        .flatMap(junction -> terms.get(AT_LEAST)
                                .hold(
                                        structure,
                                        structure.attributes(),
                                        asked -> held(analysis, structure, junction, asked)))
                        .stream())
                .toList();
    }

    private static Observation held(
            SiteAnalysis analysis, Feature structure, Junction junction, Limits.Answer.Asked asked) {
        Answer<NodeLevel> node = analysis.water().level(junction);
        if (node.value().isEmpty()) {
            return Unsaid.of(structure, "how high the water stands in " + structure.spoken(), node);
        }
        Set<Feature> cut = analysis.water()
                .cutAbove(analysis.network().downstreamOf(junction).stream()
                        .reduce((first, last) -> last)
                        .orElseThrow()
                        .down());
        Answer<Elevation> level = node.value().get().level();
        if (level.value().isEmpty()) {
            Observation dry = Observation.plain(Outcome.MEETS, structure).noting("no water stands in it");
            return Unsaid.underMoreWater(dry, cut);
        }
        Optional<Elevation> rim = structure.get(Attribute.RIM);
        Optional<Elevation> top =
                rim.or(() -> analysis.ground().flatMap(surface -> surface.elevationAt(junction.place())));
        if (top.isEmpty()) {
            return Observation.cannotTell(
                    structure, new Missing("the rim of " + structure.spoken(), "give rim with its unit"));
        }
        Elevation water = level.value().get();
        Length freeboard = top.get().above(water);
        Observation seen = Observation.measured(
                        structure,
                        asked.against((rim.isPresent() ? "rim" : "ground") + " above the water", freeboard, 0))
                .noting("grade line at " + analysis.site().printed(water, Unit.ELEVATION_FOOT));
        boolean surcharged = node.value().get().surcharged();
        return Unsaid.underMoreWater(
                surcharged ? seen.noting("the water stands above the mouth of the pipe below it") : seen, cut);
    }
}
