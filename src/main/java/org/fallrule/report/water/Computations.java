package org.fallrule.report.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.analysis.InletRunoff;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.hydraulics.gradeline.GradeLine;
import org.fallrule.hydraulics.gradeline.PipeGrade;
import org.fallrule.hydraulics.pipe.NormalDepth;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.hydrology.CompositeRunoff;
import org.fallrule.hydrology.GatheredFlow;
import org.fallrule.hydrology.RationalFlows;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodList;
import org.fallrule.network.PipeRun;
import org.fallrule.report.Computation;
import org.fallrule.report.Fact;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.terrain.flow.ContributingArea;

/** The flows of a plan worked out step by step, each step with its formula, what goes in, what comes out, and its source. */
public final class Computations {
    private final SiteAnalysis analysis;

    private Computations(SiteAnalysis analysis) {
        this.analysis = analysis;
    }

    /** One computation for each inlet whose runoff is known and each pipe whose flow is known, in the order of the plan. */
    public static List<Computation> of(SiteAnalysis analysis) {
        Computations all = new Computations(analysis);
        List<Computation> computations = new ArrayList<>();
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            analysis.water()
                    .runoff(inlet)
                    .value()
                    .map(own -> all.runoff(inlet, own))
                    .ifPresent(computations::add);
        }
        for (PipeRun run : analysis.network().runs()) {
            all.pipe(run).ifPresent(computations::add);
        }
        return computations;
    }

    private Computation runoff(Feature inlet, InletRunoff own) {
        List<Computation.Step> steps = new ArrayList<>();
        List<Fact> parts = own.parts().stream()
                .map(part -> new Fact(
                        "C, A of " + part.surface(),
                        printed(part.coefficient(), Unit.ONE) + " (" + part.source() + "), "
                                + printed(part.area(), Unit.SQUARE_FOOT)))
                .toList();
        steps.add(step(
                CompositeRunoff.METHOD,
                parts,
                "C = " + printed(own.runoff().coefficient(), Unit.ONE) + ", A = "
                        + printed(own.runoff().area(), Unit.SQUARE_FOOT)));
        Optional<Method> byFormula = MethodList.all().stream()
                .filter(method -> method.name().equals(own.timeBy()))
                .findFirst();
        if (byFormula.isPresent() && own.farthest().isPresent()) {
            ContributingArea.FlowWay way = own.farthest().get();
            steps.add(step(
                    byFormula.get(),
                    List.of(
                            fact("C", own.runoff().coefficient(), Unit.ONE),
                            fact("L", way.length(), Unit.FOOT),
                            fact("fall", way.fall(), Unit.FOOT)),
                    "tc = " + printed(own.overland(), Unit.MINUTE)));
        } else {
            steps.add(new Computation.Step(
                    "Time over the ground", "", List.of(), printed(own.overland(), Unit.MINUTE), own.timeBy()));
        }
        return new Computation("Runoff to " + inlet.spoken(), steps);
    }

    private Optional<Computation> pipe(PipeRun run) {
        PipeWater water = analysis.water().in(run);
        if (water.flow().value().isEmpty()) {
            return Optional.empty();
        }
        List<Computation.Step> steps = new ArrayList<>();
        steps.add(flow(water.flow().value().get()));
        water.pipe().value().ifPresent(pipe -> hydraulics(water, pipe, steps));
        analysis.water().grade(run).value().ifPresent(grade -> steps.add(gradeLine(grade)));
        return Optional.of(new Computation("Design flow in " + run.pipe().spoken(), steps));
    }

    private Computation.Step flow(GatheredFlow flow) {
        List<Fact> inputs = new ArrayList<>(List.of(
                fact("sum of A", flow.runoff().area(), Unit.SQUARE_FOOT),
                fact("mean C", flow.runoff().coefficient(), Unit.ONE),
                fact("longest time", flow.longest(), Unit.MINUTE),
                fact("t", flow.duration(), Unit.MINUTE),
                fact("i", flow.intensity(), Unit.INCH_PER_HOUR)));
        flow.fromPart().ifPresent(part -> inputs.add(new Fact("greater alone", "the flow of one branch")));
        return step(RationalFlows.METHOD, inputs, "Q = " + printed(flow.flow(), Unit.CUBIC_FOOT_PER_SECOND));
    }

    private void hydraulics(PipeWater water, RoundPipe pipe, List<Computation.Step> steps) {
        List<Fact> inputs = new ArrayList<>(List.of(
                fact("D", pipe.bore(), Unit.INCH),
                new Fact("n", Printed.trimmed(pipe.roughness().n()) + " (" + water.roughnessBy() + ")")));
        water.slope().value().ifPresent(slope -> inputs.add(fact("S", slope, Unit.PERCENT)));
        String carries = water.capacity()
                .map(most -> "Q = " + printed(most, Unit.CUBIC_FOOT_PER_SECOND))
                .value()
                .orElseGet(() -> water.capacity().why());
        String full = water.fullVelocity()
                .map(speed -> ", V = " + printed(speed, Unit.FOOT_PER_SECOND))
                .value()
                .orElse("");
        steps.add(step(RoundPipe.METHOD, inputs, carries + full));
        String depth = water.depth().map(y -> "y = " + printed(y, Unit.INCH)).orElse("the pipe is full");
        water.velocity()
                .value()
                .ifPresent(speed -> steps.add(
                        step(NormalDepth.METHOD, List.of(), depth + ", V = " + printed(speed, Unit.FOOT_PER_SECOND))));
    }

    private Computation.Step gradeLine(PipeGrade grade) {
        PipeGrade.Losses losses = grade.losses();
        return step(
                GradeLine.METHOD,
                List.of(
                        level("lower end", grade.down()),
                        fact("exit", losses.exit(), Unit.FOOT),
                        fact("friction", losses.friction(), Unit.FOOT),
                        fact("bend", losses.bend(), Unit.FOOT),
                        fact("entrance", losses.entrance(), Unit.FOOT)),
                printed(grade.up(), Unit.ELEVATION_FOOT) + " at the upper end");
    }

    private static Computation.Step step(Method method, List<Fact> inputs, String result) {
        return new Computation.Step(
                method.title(),
                method.formulas().get(0),
                inputs,
                result,
                method.sources().stream().limit(1).collect(Collectors.joining()));
    }

    private Fact fact(String name, Quantity value, Unit unit) {
        return new Fact(name, printed(value, unit));
    }

    private Fact level(String name, Elevation value) {
        return new Fact(name, printed(value, Unit.ELEVATION_FOOT));
    }

    private String printed(Quantity value, Unit customary) {
        return analysis.site().printed(value, customary);
    }
}
