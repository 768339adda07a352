package org.fallrule.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.comparison.Change;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.FindingChange;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Cautions;
import org.fallrule.report.Fact;
import org.fallrule.report.Sentence;
import org.fallrule.report.comparison.ChangeWords;
import org.fallrule.report.comparison.ComparisonReport;
import org.fallrule.report.map.ComparisonDrawing;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.Sheet;
import org.fallrule.report.map.SvgWriter;
import org.fallrule.site.Site;

/** The report of a comparison as one HTML page that stands alone. */
public final class ComparisonHtml {
    private static final int TITLE_LENGTH = 300;

    private final ComparisonReport report;
    private final Comparison comparison;
    private final List<FindingChange> open;
    private final List<Finding> beyond;

    private ComparisonHtml(ComparisonReport report) {
        this.report = report;
        this.comparison = report.comparison();
        this.open = report.open();
        this.beyond = Stream.of(Outcome.FAILS, Outcome.BORDERLINE)
                .flatMap(outcome -> report.asBuilt(outcome).stream())
                .toList();
    }

    /** The page's text, to be stored as UTF-8. The same comparison gives the same text. */
    public static String write(ComparisonReport report) {
        return HtmlReport.rendered("comparison.jte", new ComparisonHtml(report).page());
    }

    private ComparisonPage page() {
        return new ComparisonPage(
                PageText.still(),
                PlainText.of(comparison.after().site().name()),
                named(comparison.before().site()),
                named(comparison.after().site()),
                PlainText.of(report.rules()),
                PlainText.of(comparison.verdict()),
                comparison.fails() || comparison.gotWorse(),
                counts(),
                plans(),
                views(Change.NEW, Change.WORSE),
                views(Change.BETTER),
                views(Change.UNCHANGED),
                comparison.with(Change.GONE).stream()
                        .map(change -> ChangeView.of(0, change))
                        .toList(),
                report.settled(),
                asBuilt(),
                report.notMeasured().stream().map(PlainText::of).toList(),
                report.toMeasure().stream().map(PlainText::of).toList(),
                report.asBuilt(Outcome.MEETS).size(),
                comparison.after().isAsBuilt(),
                comparison.after().isPlan(),
                ChangeWords.lines(comparison.data()).stream()
                        .map(line -> FindingView.shown(new Fact(line.kind().spoken(), line.says())))
                        .toList(),
                report.problems().stream()
                        .map(fault -> FindingView.shown(new Fact(fault.where().toString(), fault.says())))
                        .toList(),
                PageBuilder.books(report.books()),
                Cautions.in(comparison.after().book().locality().climate()));
    }

    private static String named(Site site) {
        return PlainText.of(site.name() + " (" + site.id() + ")");
    }

    private List<Fact> counts() {
        return comparison.after().isPlan()
                ? Stream.of(Change.NEW, Change.WORSE, Change.BETTER, Change.GONE)
                        .map(change -> new Fact(
                                change.word(),
                                String.valueOf(comparison.with(change).size())))
                        .toList()
                : List.of();
    }

    private List<ChangeView> views(Change... changes) {
        List<Change> wanted = List.of(changes);
        List<ChangeView> views = new ArrayList<>();
        for (int i = 0; i < open.size(); i++) {
            if (wanted.contains(open.get(i).change())) {
                views.add(ChangeView.of(i + 1, open.get(i)));
            }
        }
        return views;
    }

    private List<ChangeView> asBuilt() {
        List<ChangeView> views = new ArrayList<>();
        for (int i = 0; i < beyond.size(); i++) {
            views.add(ChangeView.asBuilt(open.size() + i + 1, beyond.get(i)));
        }
        return views;
    }

    private List<Shape.Badge> badges() {
        List<Finding> numbered = Stream.concat(open.stream().map(FindingChange::shown), beyond.stream())
                .toList();
        List<Shape.Badge> badges = new ArrayList<>();
        for (int i = 0; i < numbered.size(); i++) {
            Finding finding = numbered.get(i);
            int number = i + 1;
            finding.observation()
                    .where()
                    .filter(where -> !where.isEmpty() && finding.outcome() != Outcome.CANNOT_TELL)
                    .ifPresent(where -> badges.add(new Shape.Badge(
                            finding.outcome(),
                            number,
                            ComparisonDrawing.middle(where),
                            PlainText.clipped(Sentence.of(finding), TITLE_LENGTH))));
        }
        return badges;
    }

    private Optional<ReportPage.Plans> plans() {
        List<Shape.Badge> badges = badges();
        return plan(badges, 0.6, 1.0, Sheet.WIDE, "plan")
                .map(wide -> new ReportPage.Plans(
                        wide,
                        plan(badges, 0.9, 1.5, Sheet.NARROW, "plan-narrow").orElse(""),
                        plan(badges, 0.5, 0.7, Sheet.PAPER, "plan-paper").orElse("")));
    }

    private Optional<String> plan(
            List<Shape.Badge> badges, double flattest, double tallest, Sheet sheet, String prefix) {
        return ComparisonDrawing.of(comparison, badges, flattest, tallest)
                .map(drawing -> SvgWriter.inline(drawing, sheet, prefix));
    }
}
