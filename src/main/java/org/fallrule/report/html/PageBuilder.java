package org.fallrule.report.html;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.network.FlowLine;
import org.fallrule.report.BillOfQuantities;
import org.fallrule.report.Cautions;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.Fact;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.SiteFacts;
import org.fallrule.report.StandingWords;
import org.fallrule.report.checklist.Checklist;
import org.fallrule.report.checklist.ChecklistEntry;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.map.Sheet;
import org.fallrule.report.map.SnippetDrawing;
import org.fallrule.report.map.SvgWriter;
import org.fallrule.report.profile.SectionDrawing;
import org.fallrule.report.profile.SectionSnippet;
import org.fallrule.report.profile.SectionSvg;
import org.fallrule.report.water.StormWords;
import org.fallrule.rulebook.RuleBook;

/** Puts a report into the words and maps of its page. */
final class PageBuilder {
    private static final int DIGEST_LENGTH = 12;

    private final Report report;
    private final List<FlowLine> lines;
    private final PlanDrawing plan;
    private final Optional<Drawing> overview;
    private final Set<Look> explained;

    PageBuilder(Report report) {
        this.report = report;
        this.lines = SectionDrawing.lines(report);
        this.plan = new PlanDrawing(report);
        this.overview = plan.drawing(0.6, 1.0);
        this.explained = overview.map(SvgWriter::legend).orElse(Set.of());
    }

    /** The large drawings are made beside the findings' small ones. */
    ReportPage page() {
        ForkJoinTask<Optional<ReportPage.Plans>> plans =
                ForkJoinPool.commonPool().submit(this::plans);
        ForkJoinTask<List<SectionView>> sections = ForkJoinPool.commonPool().submit(() -> SectionView.all(report));
        List<Finding> findings = report.byNeed();
        int firstSettled = (int)
                findings.stream().filter(finding -> finding.outcome().isOpen()).count();
        List<FindingView> views = IntStream.range(0, findings.size())
                .parallel()
                .mapToObj(i -> view(i + 1, findings.get(i)))
                .toList();
        List<ChecklistEntry> checklist = Checklist.of(report);
        List<FindingView> open = views.subList(0, firstSettled);
        List<FindingView> settled = views.subList(firstSettled, views.size());
        return new ReportPage(
                PageText.load(),
                PlainText.of(report.site().name()),
                report.verdict(),
                !report.review().failsPlan() && !report.review().leavesOpen(),
                report.review().failsPlan(),
                Stream.concat(SiteFacts.of(report).stream(), RemedyWords.jointFact(report).stream())
                        .map(FindingView::shown)
                        .toList(),
                report.outlook().standing().stream()
                        .map(ground -> PlainText.of(StandingWords.of(ground, report.site())))
                        .toList(),
                report.outlook().proposed().map(BillOfQuantities::of).orElse(List.of()),
                counts(),
                FailingRule.in(open),
                FilterChoices.of(report),
                plans.join(),
                sections.join(),
                open,
                settled,
                report.review().problems().stream()
                        .map(fault -> FindingView.shown(new Fact(fault.where().toString(), fault.says())))
                        .toList(),
                report.analysis().network().runs().stream()
                        .map(run -> PipeRow.of(run, report.site()))
                        .toList(),
                StructureRow.all(report),
                PlainText.of(StormWords.of(report.analysis())),
                WaterView.all(report.analysis()),
                CrossedUtility.of(report).stream().map(CrossingView::of).toList(),
                checklist.stream().map(ChecklistRow::of).toList(),
                Checklist.summary(checklist),
                books(report.book().books()),
                Cautions.in(report.book().locality().climate()));
    }

    private FindingView view(int number, Finding finding) {
        Optional<String> map = finding.outcome().isOpen() || isDistance(finding)
                ? Optional.of(maps(number, finding)).filter(drawn -> !drawn.isEmpty())
                : Optional.empty();
        return FindingView.of(
                number,
                finding,
                RemedyWords.of(report, finding),
                map,
                FindingPlace.of(finding, Stretch.of(finding, lines)));
    }

    /** The finding in plan and, where it measured a height, in profile. */
    private String maps(int number, Finding finding) {
        String plan = SnippetDrawing.of(report, finding)
                .map(drawing -> SvgWriter.snippet(drawing, "map-" + number, explained))
                .orElse("");
        String profile = SectionSnippet.of(report, finding)
                .map(section -> SectionSvg.snippet(section, "profile-" + number))
                .orElse("");
        return plan + profile;
    }

    private static boolean isDistance(Finding finding) {
        return finding.observation()
                .measured()
                .filter(measured -> measured.value().dimension() == Dimension.LENGTH)
                .isPresent();
    }

    private Optional<ReportPage.Plans> plans() {
        return overview.map(wide -> new ReportPage.Plans(
                SvgWriter.inline(wide, Sheet.WIDE, "plan"),
                plan(0.9, 1.5, Sheet.NARROW, "plan-narrow"),
                plan(0.5, 0.7, Sheet.PAPER, "plan-paper")));
    }

    private String plan(double flattest, double tallest, Sheet sheet, String prefix) {
        return plan.drawing(flattest, tallest)
                .map(drawing -> SvgWriter.inline(drawing, sheet, prefix))
                .orElse("");
    }

    private List<ReportPage.Count> counts() {
        return Arrays.stream(Outcome.values())
                .map(outcome -> new ReportPage.Count(
                        OutcomeSign.of(outcome), report.review().count(outcome)))
                .toList();
    }

    static List<ReportPage.Book> books(List<RuleBook.Source> books) {
        return books.stream()
                .map(book -> new ReportPage.Book(
                        PlainText.of(book.title()),
                        PlainText.of(book.file()),
                        book.sha256()
                                .substring(
                                        0, Math.min(DIGEST_LENGTH, book.sha256().length()))))
                .toList();
    }
}
