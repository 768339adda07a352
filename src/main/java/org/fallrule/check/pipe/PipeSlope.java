package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.Accuracy;
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
import org.fallrule.measure.Range;
import org.fallrule.measure.Slope;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;

/** The slope of each pipe, in the direction that its water should run. */
@AutoService(Check.class)
public final class PipeSlope implements Check {
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
                    "at_least", Bound.AT_LEAST, Dimension.SLOPE, "least slope; 0 % for never uphill")
            .within(Range.between("0 %", "100 %", Dimension.SLOPE));
    static final Parameter<Limits> AT_MOST =
            Parameter.limit("at_most", Bound.AT_MOST, Dimension.SLOPE, "greatest slope");

    @Override
    public String name() {
        return "slope";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The slope of each pipe from the inverts at its ends; negative when it runs uphill.",
                "S = (invert up - invert down) / plan length",
                "Slope of horizontal drainage piping as in IPC table 704.1 (fall per foot of run). Taking plan length for"
                        + " sloped length changes a slope of 5 % by 0.13 % of itself.",
                List.of("bellies between the ends", "how the pipe was laid in the end"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_LEAST, AT_MOST);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return analysis.runsAsked().stream()
                .flatMap(run -> Stream.of(AT_LEAST, AT_MOST)
                        .flatMap(bound -> terms.find(bound).stream())
                        .flatMap(limits -> observe(analysis, run, limits).stream()))
                .distinct()
                .toList();
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, PipeRun run, Limits limits) {
        Optional<Slope> slope = run.slope();
        if (slope.isEmpty()) {
            return Optional.of(InvertsMissing.of(run));
        }
        double accuracy = Accuracy.ofHeight(analysis, run.pipe(), run.pipe()).metres()
                / run.length().metres();
        return limits.hold(
                run.pipe(),
                run.pipe().attributes(),
                asked -> Observation.measured(run.pipe(), asked.against("slope", slope.get(), accuracy))
                        .at(run.axis()));
    }
}
