package org.fallrule.report.proposal;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Weight;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.proposal.Hindrance;
import org.fallrule.proposal.Proposal;
import org.fallrule.proposal.Proposals;
import org.fallrule.proposal.StandingGround;
import org.fallrule.report.Cautions;
import org.fallrule.report.StandingWords;
import org.fallrule.report.text.Wrapped;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** Proposed lines for a terminal, 80 columns wide. */
public final class ProposalText {
    private static final int WIDTH = 80;
    private static final String HANG = " ".repeat(13);

    private final StringBuilder text = new StringBuilder();

    private ProposalText() {}

    /**
     * The proposals as text of 80 columns.
     *
     * @param without rules that were left out of account
     */
    public static String write(SiteAnalysis analysis, RuleBook book, Proposals proposals, Set<String> without) {
        ProposalText page = new ProposalText();
        page.paragraph("", analysis.site().name());
        if (!without.isEmpty()) {
            page.paragraph("", "left out of account, and still to be settled: " + String.join(", ", without));
        }
        page.line("");
        String grid = analysis.site().printed(book.locality().laying().metres(Laying.Measure.GRID));
        if (proposals.proposals().isEmpty()) {
            page.none(analysis, book.only(rule -> !without.contains(rule.id())), proposals, grid);
        } else {
            page.proposals(proposals.proposals(), grid);
        }
        page.line("");
        Cautions.in(book.locality().climate()).forEach(caution -> page.paragraph("", caution));
        return page.text.toString();
    }

    private void none(SiteAnalysis analysis, RuleBook book, Proposals proposals, String grid) {
        paragraph("", "No line was found that passes; looked for on a grid of " + grid + ".");
        StandingGround.ofOutfall(analysis, book).ifPresent(ground -> {
            paragraph("", StandingWords.of(ground, analysis.site()));
            String rules = ground.barring().stream().map(Rule::id).collect(Collectors.joining(", "));
            paragraph("", "Ground of the lot is barred to it by " + rules + " and by the fall" + waters(book) + ".");
        });
        line("");
        if (!proposals.hindrances().isEmpty()) {
            line("In its way:");
        }
        for (Hindrance hindrance : proposals.hindrances()) {
            paragraph(
                    "  ",
                    hindrance.rule() + ": " + hindrance.title() + " ("
                            + hindrance.setBy().fileAndLine() + "): " + hindrance.spoken());
        }
        rest(proposals);
    }

    /** The binding rules on where the water of an outfall runs. */
    private static String waters(RuleBook book) {
        String rules = book.rules().stream()
                .filter(rule ->
                        rule.weight() == Weight.MUST && rule.check().name().equals("flow_path"))
                .map(Rule::id)
                .collect(Collectors.joining(", "));
        return rules.isEmpty() ? "" : "; where its water runs also by " + rules;
    }

    private void rest(Proposals proposals) {
        boolean named = proposals.hindrances().stream().anyMatch(each -> each.how() != Hindrance.How.WHATEVER_THE_LINE);
        if (proposals.isRestMet()) {
            paragraph("", "All else a line can meet: --without and the rule's name leaves it out of account.");
        } else if (!named) {
            paragraph(
                    "",
                    "No other rule stands in the way alone, nor do two of those on place and fall: without them there is"
                            + " still none. To see which of them do so together, leave several out of account: --without"
                            + " RULE,RULE.");
        }
    }

    private void proposals(List<Proposal> proposals, String grid) {
        if (proposals.get(0).course() != Proposal.Course.FOUND) {
            paragraph(
                    "",
                    "No line was found that passes on a grid of " + grid
                            + ", but one along the course that was submitted does, proved by a review.");
        } else {
            found(proposals, grid);
        }
        for (int i = 0; i < proposals.size(); i++) {
            line("");
            line("Proposal " + (i + 1));
            ProposalWords.of(proposals.get(i)).forEach(this::row);
            SiteAnalysis analysis = proposals.get(i).analysis();
            analysis.network().runs().forEach(run -> pipe(analysis.site(), run));
        }
    }

    private void found(List<Proposal> proposals, String grid) {
        paragraph(
                "",
                (proposals.size() == 1 ? "One line passes" : proposals.size() + " lines pass") + ", found on a grid of "
                        + grid + " and proved by a review. The cheapest comes first.");
    }

    private void row(ProposalWords.Row row) {
        List<String> lines = Wrapped.lines(row.says(), WIDTH - HANG.length());
        for (int i = 0; i < lines.size(); i++) {
            String before = i == 0 ? String.format(Locale.ROOT, "  %-11s", row.heading()) : HANG;
            line(before + lines.get(i));
        }
    }

    private void pipe(Site plan, PipeRun run) {
        line(String.format(
                Locale.ROOT,
                "  %-6s %5s %10s %8s  invert %s to %s",
                run.id(),
                run.diameter().map(plan::nominal).orElse(""),
                plan.printed(run.length().metres()),
                run.slope().map(slope -> Printed.of(slope, Unit.PERCENT)).orElse(""),
                run.invertUp().map(invert -> level(plan, invert)).orElse(""),
                run.invertDown().map(invert -> level(plan, invert)).orElse("")));
    }

    private static String level(Site plan, Elevation level) {
        Unit unit = plan.unit(Unit.ELEVATION_FOOT);
        return String.format(Locale.ROOT, "%." + unit.decimals() + "f", level.in(unit));
    }

    private void paragraph(String indent, String words) {
        Wrapped.lines(words, WIDTH - indent.length()).forEach(each -> line(indent + each));
    }

    private void line(String words) {
        text.append(words).append('\n');
    }
}
