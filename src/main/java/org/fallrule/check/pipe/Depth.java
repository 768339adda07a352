package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.site.Role;

/** How deep each pipe's trench is dug, along its whole run. */
@AutoService(Check.class)
public final class Depth implements Check {
    static final Parameter<Limits> AT_MOST = Parameter.limit(
            "at_most",
            Bound.AT_MOST,
            Dimension.LENGTH,
            "greatest depth; may depend on above (lawn, walk, drive, street, building) and on to_outfall_ft, the length"
                    + " of pipe still to run to a daylight outfall");
    static final Parameter<Limits> AT_LEAST =
            Parameter.limit("at_least", Bound.AT_LEAST, Dimension.LENGTH, "least depth; may depend on the same");
    static final Parameter<Quantity> BEDDING = Parameter.quantity(
            "bedding", Dimension.LENGTH, "how far the trench is dug below the pipe; none when it is not given");

    @Override
    public String name() {
        return "depth";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The greatest and least depth of each pipe's trench, separately for each stretch that has a limit of its"
                        + " own.",
                "depth = finished ground - bottom of trench; bottom of trench = invert - wall - bedding; wall = half of"
                        + " outside less nominal diameter; the pipe is straight between its inverts, the ground between"
                        + " the breaks of its surface",
                "Geometry of the cut; depth of an excavation as in 29 CFR 1926.652(a)(1). No model code is known to limit"
                        + " the depth of a lot's drain.",
                List.of(
                        "ground between spot elevations",
                        "how deep the trench is dug in the end",
                        "grading after the survey"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_MOST, AT_LEAST, BEDDING);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return EachProfile.observe(analysis, (run, profile) -> {
            Trench trench = new Trench(analysis, run, profile, terms.find(BEDDING));
            GroundOver depth = new GroundOver(analysis, run, profile, "trench depth", trench::bottomAt);
            return Stream.of(AT_MOST, AT_LEAST)
                    .flatMap(bound -> terms.find(bound).stream())
                    .flatMap(limits -> depth.against(limits).stream())
                    .toList();
        });
    }
}
