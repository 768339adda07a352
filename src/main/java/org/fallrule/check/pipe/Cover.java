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
import org.fallrule.site.Role;

/** The ground over each pipe, along its whole run, by what lies above it. */
@AutoService(Check.class)
public final class Cover implements Check {
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
            "at_least",
            Bound.AT_LEAST,
            Dimension.LENGTH,
            "least cover; may depend on above (lawn, walk, drive, street, building) and on to_outfall_ft, the length"
                    + " of pipe still to run to a daylight outfall");
    static final Parameter<Limits> AT_MOST =
            Parameter.limit("at_most", Bound.AT_MOST, Dimension.LENGTH, "greatest cover");

    @Override
    public String name() {
        return "cover";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The least and greatest cover of each pipe, separately for each stretch that has a limit of its own.",
                "cover = finished ground - outside top of pipe; outside top = invert - wall + outside diameter; wall ="
                        + " half of outside less nominal diameter; the pipe is straight between its inverts, the"
                        + " ground between the breaks of its surface",
                "Cover to the outside top of pipe, as in NEC 300.5 table note and county storm standards.",
                List.of(
                        "ground between spot elevations",
                        "the thickness of a slab or pavement, unless the spots are taken on it",
                        "grading after the survey"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_LEAST, AT_MOST);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return EachProfile.observe(analysis, (run, profile) -> {
            GroundOver cover = new GroundOver(analysis, run, profile, "cover", profile::topAt);
            return Stream.of(AT_LEAST, AT_MOST)
                    .flatMap(bound -> terms.find(bound).stream())
                    .flatMap(limits -> cover.against(limits).stream())
                    .toList();
        });
    }
}
