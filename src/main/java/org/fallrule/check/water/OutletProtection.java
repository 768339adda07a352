package org.fallrule.check.water;

import com.google.auto.service.AutoService;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.hydraulics.gradeline.PipeGrade;
import org.fallrule.hydraulics.outlet.ApronByDischarge;
import org.fallrule.hydraulics.outlet.RiprapApron;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Velocity;
import org.fallrule.measure.Written;
import org.fallrule.method.Answer;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** Whether the ground below each outfall holds against the water, or stone holds it. */
@AutoService(Check.class)
public final class OutletProtection implements Check {
    static final Parameter<Limits> AT_MOST = Parameter.limit(
                    "at_most",
                    Bound.AT_MOST,
                    Dimension.VELOCITY,
                    "greatest velocity that the ground below the outfall stands by itself; may depend on ground_cover")
            .always();
    static final Parameter<String> APRON = Parameter.oneOf(
                    "apron",
                    List.of("by_culvert", "by_discharge"),
                    "how long a stone apron must be that holds more: by_culvert as riprap_apron, by_discharge as"
                            + " apron_by_discharge")
            .always();

    @Override
    public String name() {
        return "outlet_protection";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The velocity of the design flow where it leaves each daylight or pop-up outfall; where it is more than the"
                        + " ground stands, the length of the stone apron that the plan gives.",
                "velocity of the pipe's lower end on the grade line (grade_line); least length of the apron by the method"
                        + " that the rule names (riprap_apron, apron_by_discharge)",
                "HEC-14, third edition, chapter 10; permissible velocities as the rule's basis says.",
                List.of(
                        "curb outfalls, below which there is pavement",
                        "width, thickness and laying of the stone, and cloth under it",
                        "ground steeper than a few per cent below the outfall"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_MOST, APRON);
    }

    @Override
    public Set<Attribute<?>> looksAtDetails() {
        return Set.of(Attribute.APRON_LENGTH);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.OUTFALL), new Need.OfLayer(Role.PIPE), new Need.OfStorm());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return analysis.site().features(Role.OUTFALL).stream()
                .filter(outfall ->
                        !outfall.get(Attribute.KIND).orElse("daylight").equals("curb"))
                .flatMap(outfall -> terms
                        .get(AT_MOST)
                        .hold(outfall, outfall.attributes(), asked -> held(analysis, terms, outfall, asked))
                        .stream())
                .toList();
    }

    private static Observation held(SiteAnalysis analysis, Terms terms, Feature outfall, Limits.Answer.Asked asked) {
        Optional<PipeRun> last = analysis.network()
                .junctionOf(outfall)
                .flatMap(junction -> analysis.network().into(junction).stream()
                        .max(Comparator.comparingDouble(run -> speed(leaving(analysis, run)))));
        if (last.isEmpty()) {
            return Observation.cannotTell(
                    outfall, new Missing("the pipe that leads to " + outfall.spoken(), "draw it up to the outfall"));
        }
        Answer<Velocity> velocity = leaving(analysis, last.get());
        if (velocity.value().isEmpty()) {
            return Unsaid.of(outfall, "how fast the water leaves " + outfall.spoken(), velocity);
        }
        Observation bare = Observation.measured(
                outfall,
                asked.against(
                        "velocity of the water that leaves it", velocity.value().get(), 0));
        Observation seen = bare.outcome() == Outcome.FAILS
                ? behindApron(analysis.site(), analysis.water().in(last.get()), terms.get(APRON), outfall, bare, asked)
                : bare;
        return Unsaid.underMoreWater(seen, analysis.water().cutAbove(last.get().down()));
    }

    private static double speed(Answer<Velocity> velocity) {
        return velocity.value().map(Velocity::metresPerSecond).orElse(Double.POSITIVE_INFINITY);
    }

    /** Not known of a pipe that no inlet of the plan drains to: what it carries is not nothing, it is not said. */
    private static Answer<Velocity> leaving(SiteAnalysis analysis, PipeRun run) {
        return analysis.water()
                .in(run)
                .flow()
                .then(flow -> analysis.water().grade(run).map(PipeGrade::velocityDown));
    }

    /** What a velocity that the bare ground does not stand comes to where the plan gives stone, or leaves it open. */
    private static Observation behindApron(
            Site plan, PipeWater water, String method, Feature outfall, Observation bare, Limits.Answer.Asked asked) {
        Answer<Length> needed = length(water, method);
        if (needed.value().isEmpty()) {
            return bare.noting("the length of a stone apron that would hold it is not known: " + needed.why());
        }
        Optional<Length> given = outfall.get(Attribute.APRON_LENGTH);
        if (given.isEmpty()) {
            return bare.noting("no stone apron is shown; one "
                    + plan.printed(needed.value().get(), Unit.FOOT) + " long would hold it (" + methodName(method)
                    + ")");
        }
        Unit unit = plan.unit(Unit.FOOT);
        Written least = Written.of(Math.ceil(needed.value().get().in(unit) * 100) / 100, unit);
        Measured apron = new Measured(
                "length of the stone apron",
                given.get(),
                0,
                Optional.of(new Limit(Bound.AT_LEAST, least)),
                Optional.of(asked.setBy()));
        return Observation.measured(outfall, apron)
                .noting("the water leaves it at " + plan.printed(leavingSpeed(bare), Unit.FOOT_PER_SECOND)
                        + ", more than the bare ground stands")
                .noting("least length by " + methodName(method));
    }

    private static Velocity leavingSpeed(Observation bare) {
        return (Velocity) bare.measured().orElseThrow().value();
    }

    private static String methodName(String method) {
        return method.equals("by_culvert") ? RiprapApron.METHOD.name() : ApronByDischarge.METHOD.name();
    }

    private static Answer<Length> length(PipeWater water, String method) {
        Answer<Flow> flow = water.flow().map(gathered -> gathered.flow());
        return water.pipe()
                .then(pipe -> flow.then(design -> {
                    if (method.equals("by_discharge")) {
                        return ApronByDischarge.length(pipe.bore(), design);
                    }
                    Length none = new Length(0);
                    Answer<RiprapApron> apron = water.depth()
                            .map(depth -> RiprapApron.ofRapidFlow(pipe.bore(), depth, design, none))
                            .orElseGet(() -> RiprapApron.of(pipe.bore(), design, none));
                    return apron.map(RiprapApron::length);
                }));
    }
}
