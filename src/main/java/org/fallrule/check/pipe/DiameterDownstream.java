package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
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
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;

/** Whether the drain grows narrower on its way down. */
@AutoService(Check.class)
public final class DiameterDownstream implements Check {
    static final Parameter<Limits> NARROWER = Parameter.limit(
                    "narrower_at_most",
                    Bound.AT_MOST,
                    Dimension.LENGTH,
                    "by how much a pipe may be narrower than one that flows into it; 0 in for never")
            .always();

    @Override
    public String name() {
        return "diameter_downstream";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "At every place where pipes meet, the nominal diameter of each pipe that comes in less that of the pipe"
                        + " that carries its water on.",
                "narrowing = diameter of the pipe in - diameter of the pipe out, none below zero",
                "No drain is reduced in size in the direction of flow: IPC 1101.5.",
                List.of("fittings and crushed pipe", "a narrower inside in pipe of the same nominal size"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(NARROWER);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return analysis.network().runs().stream()
                .filter(in -> !in.down().isOutfall())
                .flatMap(in -> analysis.network().leaving(in.down()).flatMap(out -> held(terms, in, out)).stream())
                .toList();
    }

    private static Optional<Observation> held(Terms terms, PipeRun in, PipeRun out) {
        Optional<Length> before = in.diameter();
        Optional<Length> after = out.diameter();
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.of(lacking(in, out));
        }
        Length narrowing =
                new Length(Math.max(0, before.get().metres() - after.get().metres()));
        return terms.get(NARROWER)
                .hold(
                        out.pipe(),
                        out.pipe().attributes(),
                        asked -> Observation.measured(out.pipe(), asked.against("narrowing", narrowing, 0)))
                .map(seen -> seen.against(in.pipe()).at(out.axis().getStartPoint()));
    }

    private static Observation lacking(PipeRun in, PipeRun out) {
        List<Missing> lacking = Stream.of(in, out)
                .filter(run -> run.diameter().isEmpty())
                .map(run -> new Missing(
                        "the diameter of " + run.pipe().spoken(),
                        "give diameter in " + run.pipe().origin().file()))
                .toList();
        Observation seen = Observation.cannotTell(out.pipe(), lacking.get(0)).against(in.pipe());
        return lacking.size() > 1 ? seen.lacking(lacking.get(1)) : seen;
    }
}
