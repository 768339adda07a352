package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is not looked at again when only heights of the drain are tried does not change with them: held against the whole book. */
class HeightsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void rulesThatHeightsDoNotMatterToFindTheSame(String sample) {
        Site site = SiteReader.read(Path.of("sample-sites", sample));
        RuleBook book = new RuleLibrary(Path.of("rules"), "rules")
                .load(site.county().orElse("larkmoor"), site.house())
                .only(rule -> !Heights.matterTo(rule));
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Site lowered = lowered(analysis);

        assertThat(Heights.alone(site, lowered)).isTrue();
        assertThat(book.rules()).isNotEmpty();
        assertThat(told(analysis.with(lowered), book)).isEqualTo(told(analysis, book));
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14"})
    void whatMovesInPlanIsNoChangeOfHeightsAlone(String sample) {
        Site site = SiteReader.read(Path.of("sample-sites", sample));
        SiteAnalysis analysis = SiteAnalysis.of(site);
        Feature outfall = site.features(Role.OUTFALL).get(0);
        Edits moved = new Edits(site, analysis.network())
                .move(analysis.network().junctionOf(outfall).orElseThrow(), 0.1, 0);
        Edits wider = new Edits(site, analysis.network())
                .set(site.features(Role.PIPE).get(0), Attribute.DIAMETER, new Length(0.3));

        assertThat(Heights.alone(site, moved.site())).isFalse();
        assertThat(Heights.alone(site, wider.site())).isFalse();
    }

    /** The plan with every pipe 0.3 m lower, its lower end 0.4 m, and every grate 0.1 m lower. */
    private static Site lowered(SiteAnalysis analysis) {
        Edits edits = new Edits(analysis.site(), analysis.network());
        for (PipeRun run : analysis.network().runs()) {
            edits.raise(run, new Length(-0.3), new Length(-0.4));
        }
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            Optional<Elevation> rim = inlet.get(Attribute.RIM);
            rim.ifPresent(level -> edits.set(inlet, Attribute.RIM, level.minus(new Length(0.1))));
        }
        return edits.site();
    }

    private static List<String> told(SiteAnalysis analysis, RuleBook book) {
        return Reviewer.review(analysis, book, TODAY).findings().stream()
                .map(HeightsTest::told)
                .toList();
    }

    private static String told(Finding finding) {
        return Subject.of(finding) + " " + finding.outcome() + " "
                + finding.observation().measured().map(measured -> measured.value() + " " + measured.accuracy());
    }
}
