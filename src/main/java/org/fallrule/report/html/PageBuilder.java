package org.fallrule.report.html;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.report.Cautions;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.Fact;
import org.fallrule.report.Report;
import org.fallrule.report.SiteFacts;
import org.fallrule.report.checklist.Checklist;
import org.fallrule.report.checklist.ChecklistEntry;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.map.Sheet;
import org.fallrule.report.map.SnippetDrawing;
import org.fallrule.report.map.SvgWriter;
import org.fallrule.report.water.StormWords;

/** Puts a report into the words and maps of its page. */
final class PageBuilder {
    private static final Set<Outcome> OPEN = EnumSet.of(Outcome.FAILS, Outcome.BORDERLINE, Outcome.CANNOT_TELL);
    private static final int DIGEST_LENGTH = 12;

    private final Report report;

    PageBuilder(Report report) {
        this.report = report;
    }

    ReportPage page() {
        List<Finding> findings = report.byNeed();
        int firstSettled = (int) findings.stream().filter(PageBuilder::isOpen).count();
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
                SiteFacts.of(report).stream().map(FindingView::shown).toList(),
                counts(),
                plans(),
                SectionView.all(report),
                open,
                settled,
                report.review().problems().stream()
                        .map(fault -> FindingView.shown(new Fact(fault.where().toString(), fault.says())))
                        .toList(),
                report.analysis().network().runs().stream().map(PipeRow::of).toList(),
                StructureRow.all(report),
                PlainText.of(StormWords.of(report.analysis())),
                WaterView.all(report.analysis()),
                CrossedUtility.of(report).stream().map(CrossingView::of).toList(),
                checklist.stream().map(ChecklistRow::of).toList(),
                Checklist.summary(checklist),
                books(),
                Cautions.in(report.book().locality().climate()));
    }

    /** Findings are sorted by outcome, the open ones first. */
    private static boolean isOpen(Finding finding) {
        return OPEN.contains(finding.outcome());
    }

    private FindingView view(int number, Finding finding) {
        Optional<String> map = isOpen(finding) || isDistance(finding)
                ? SnippetDrawing.of(report, finding)
                        .map(drawing -> SvgWriter.inline(drawing, Sheet.SNIPPET, "map-" + number))
                : Optional.empty();
        return FindingView.of(number, finding, map);
    }

    private static boolean isDistance(Finding finding) {
        return finding.observation()
                .measured()
                .filter(measured -> measured.value().dimension() == Dimension.LENGTH)
                .isPresent();
    }

    private Optional<ReportPage.Plans> plans() {
        return PlanDrawing.of(report, 0.6, 1.0)
                .map(wide -> new ReportPage.Plans(
                        SvgWriter.inline(wide, Sheet.WIDE, "plan"),
                        plan(0.9, 1.5, Sheet.NARROW, "plan-narrow"),
                        plan(0.5, 0.7, Sheet.PAPER, "plan-paper")));
    }

    private String plan(double flattest, double tallest, Sheet sheet, String prefix) {
        return PlanDrawing.of(report, flattest, tallest)
                .map(drawing -> SvgWriter.inline(drawing, sheet, prefix))
                .orElse("");
    }

    private List<ReportPage.Count> counts() {
        return Arrays.stream(Outcome.values())
                .map(outcome -> new ReportPage.Count(
                        OutcomeSign.of(outcome), report.review().count(outcome)))
                .toList();
    }

    private List<ReportPage.Book> books() {
        return report.book().books().stream()
                .map(book -> new ReportPage.Book(
                        PlainText.of(book.title()),
                        PlainText.of(book.file()),
                        book.sha256()
                                .substring(
                                        0, Math.min(DIGEST_LENGTH, book.sha256().length()))))
                .toList();
    }
}
