package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.hydrology.CodeTable;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Range;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether each pipe carries the design flow. */
@AutoService(Check.class)
public final class Capacity implements Check {
    static final Parameter<Limits> AT_MOST = Parameter.limit(
                    "at_most",
                    Bound.AT_MOST,
                    Dimension.RATIO,
                    "greatest design flow as a share of what the pipe carries: 1 for just full, 0.8 for a fifth in reserve")
            .within(Range.SHARE_ABOVE_ZERO)
            .always();
    static final Parameter<String> TABLE = Parameter.oneOf(
            "table",
            Arrays.stream(CodeTable.Edition.values()).map(Capacity::word).toList(),
            "the plumbing code whose printed table says what a pipe carries; else Manning's formula does");

    private static String word(CodeTable.Edition edition) {
        return edition.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String name() {
        return "capacity";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The flow that the design storm brings down each pipe, as a share of what the pipe carries running full.",
                "share = Q / capacity; Q by the rational method along the drain (rational_flows), capacity by Manning's"
                        + " formula with the nominal diameter as bore (manning_full) or by the code's table (code_table)",
                "HEC-22, third edition, chapters 3 and 7; IPC 1106 and UPC 1103 for the tables.",
                List.of(
                        "blocked, crushed or badly laid pipe",
                        "whether the grate lets the water in: see inlet_capture",
                        "whether water stands above a rim although the pipe is large enough: see grade_line",
                        "storms rarer than the one designed for"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_MOST, TABLE);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfStorm());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Optional<CodeTable> table =
                terms.find(TABLE).map(word -> CodeTable.of(CodeTable.Edition.valueOf(word.toUpperCase(Locale.ROOT))));
        return analysis.runsAsked().stream()
                .map(run -> analysis.water().in(run))
                .flatMap(water -> terms
                        .get(AT_MOST)
                        .hold(
                                water.run().pipe(),
                                water.run().pipe().attributes(),
                                asked -> held(analysis, water, carries(water, table), asked))
                        .stream())
                .toList();
    }

    private static Answer<Flow> carries(PipeWater water, Optional<CodeTable> table) {
        return table.map(printed -> water.slope()
                        .then(slope -> water.run()
                                .diameter()
                                .map(size -> printed.drain(size, slope))
                                .orElseGet(() -> Answer.none("the diameter is not given"))))
                .orElseGet(water::capacity);
    }

    private static Observation held(
            SiteAnalysis analysis, PipeWater water, Answer<Flow> carries, Limits.Answer.Asked asked) {
        Feature pipe = water.run().pipe();
        boolean rises =
                water.slope().value().filter(slope -> slope.ratio() <= 0).isPresent();
        if (rises) {
            return Observation.plain(Outcome.FAILS, pipe)
                    .telling(pipe.spoken() + " does not fall and so has no capacity of its own");
        }
        if (water.flow().value().isEmpty()) {
            return Unsaid.of(pipe, "the design flow in " + pipe.spoken(), water.flow());
        }
        if (carries.value().isEmpty()) {
            return Unsaid.of(pipe, "what " + pipe.spoken() + " carries", carries);
        }
        Flow flow = water.flow().value().get().flow();
        Flow most = carries.value().get();
        Ratio share = new Ratio(flow.cubicMetresPerSecond() / most.cubicMetresPerSecond());
        Observation seen = Observation.measured(pipe, asked.against("share of its capacity", share, 0))
                .noting("design flow " + shown(analysis, flow) + " of " + shown(analysis, most));
        return Unsaid.underMoreWater(seen, analysis.water().cutAbove(water.run().up()));
    }

    private static String shown(SiteAnalysis analysis, Flow flow) {
        return analysis.site().printed(flow, Unit.CUBIC_FOOT_PER_SECOND);
    }
}
