package org.fallrule.report.gradesheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.network.FlowLines;
import org.fallrule.report.Cautions;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;

/**
 * What a crew needs to lay the pipes of a plan.
 *
 * @param id the site folder's name
 * @param site the site's name
 * @param datum the datum of heights, if the plan says
 * @param settings how it was made
 * @param utilities what is to be said where the plan has no utilities
 * @param pipes the pipes in the direction of flow, line by line
 * @param cautions what the crew is warned of
 */
public record GradeSheet(
        String id,
        String site,
        Optional<String> datum,
        Settings settings,
        Optional<String> utilities,
        List<PipeGrade> pipes,
        List<String> cautions) {
    public GradeSheet {
        pipes = List.copyOf(pipes);
        cautions = List.copyOf(cautions);
    }

    private static Optional<String> utilities(Layer layer, HandZones zones) {
        if (layer instanceof Layer.NotSupplied) {
            return Optional.of(
                    "THE PLAN SAYS NOTHING OF UTILITIES: no crossing and no digging by hand is flagged here.");
        }
        if (layer instanceof Layer.StatedAbsent) {
            return Optional.of("The plan states that there are no utilities. Have them marked all the same.");
        }
        String unsaid = layer.features().stream()
                .filter(utility -> zones.reachFrom(utility).isEmpty())
                .map(utility -> PlainText.clipped(utility.spoken(), 40))
                .collect(Collectors.joining(", "));
        return unsaid.isEmpty()
                ? Optional.empty()
                : Optional.of("No rule says how near to dig by hand to " + unsaid + ": nothing is flagged there.");
    }

    public static GradeSheet of(SiteAnalysis analysis, Settings settings) {
        List<PipeGrade> pipes = FlowLines.of(analysis.network()).stream()
                .flatMap(line -> line.runs().stream())
                .map(run -> PipeGrade.of(analysis, run, settings))
                .toList();
        return new GradeSheet(
                analysis.site().id(),
                PlainText.of(analysis.site().name()),
                analysis.site().datum().map(PlainText::of),
                settings,
                utilities(analysis.site().layer(Role.UTILITY), settings.byHand()),
                pipes,
                Cautions.forTheCrew());
    }
}
