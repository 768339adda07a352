package org.fallrule.check.utility;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Range;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.GeometryFactory;

/** The angle at which the drain crosses other people's pipes and wires. */
@AutoService(Check.class)
public final class CrossingAngle implements Check {
    static final Parameter<Selection> FROM = Parameter.features("from", "the utilities that are crossed", Role.UTILITY);
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
                    "at_least", Bound.AT_LEAST, Dimension.ANGLE, "least angle; 90 deg is square")
            .within(Range.between("0 deg", "90 deg", Dimension.ANGLE))
            .always();

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "crossing_angle";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The angle in plan between each pipe of the drain and each utility at every place where they cross, from"
                        + " 0 to 90 degrees; at a bend of one of them the least there is.",
                "angle = least angle between the straight pieces that meet there",
                "22 CCR 64572(d) asks 45 degrees of crossings with a water main.",
                List.of("utilities that are not on the plan", "that a mark lies as much as its quality level askew"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, AT_LEAST);
    }

    @Override
    public boolean looksAtHeights() {
        return false;
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.UTILITY));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        Selection from = terms.get(FROM);
        for (PipeRun run : analysis.runsAsked()) {
            for (UtilityCrossing crossing : UtilityCrossing.along(analysis, run)) {
                Feature utility = crossing.utility();
                if (from.mayChoose(utility)) {
                    observe(analysis, terms.get(AT_LEAST), crossing)
                            .map(seen -> from.settled(seen, utility))
                            .ifPresent(observations::add);
                }
            }
        }
        return observations;
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, Limits limits, UtilityCrossing crossing) {
        Feature pipe = crossing.run().pipe();
        return limits.hold(
                pipe,
                PipeAndUtility.attributes(pipe, crossing.utility()),
                asked -> Observation.measured(pipe, asked.against("crossing angle", crossing.angle(), 0))
                        .against(crossing.utility())
                        .at(GEOMETRY.createPoint(crossing.place()))
                        .noting("crossing at station " + analysis.station(crossing.station())));
    }
}
