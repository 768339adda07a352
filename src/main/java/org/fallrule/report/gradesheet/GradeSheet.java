package org.fallrule.report.gradesheet;

import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.network.FlowLines;
import org.fallrule.report.Cautions;
import org.fallrule.report.map.PlainText;

/**
 * What a crew needs to lay the pipes of a plan.
 *
 * @param id the site folder's name
 * @param site the site's name
 * @param datum the datum of heights, if the plan says
 * @param settings how it was made
 * @param pipes the pipes in the direction of flow, line by line
 * @param cautions what the crew is warned of
 */
public record GradeSheet(
        String id,
        String site,
        Optional<String> datum,
        Settings settings,
        List<PipeGrade> pipes,
        List<String> cautions) {
    public GradeSheet {
        pipes = List.copyOf(pipes);
        cautions = List.copyOf(cautions);
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
                pipes,
                Cautions.forTheCrew());
    }
}
