package org.fallrule.report.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Unit;
import org.fallrule.proposal.Proposal;
import org.fallrule.proposal.Quantities;
import org.fallrule.report.StandingWords;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** One proposed line in words, for each thing a line. */
final class ProposalWords {
    private ProposalWords() {}

    /** A heading and what stands under it. */
    record Row(String heading, String says) {}

    static List<Row> of(Proposal proposal) {
        Quantities take = proposal.quantities();
        Site plan = proposal.analysis().site();
        List<Row> rows = new ArrayList<>();
        if (proposal.course() != Proposal.Course.FOUND) {
            rows.add(new Row("course", proposal.course().spoken()));
        }
        rows.add(new Row("outfall", outfall(proposal)));
        rows.add(new Row("pipe", pipe(plan, take)));
        rows.add(new Row("fittings", fittings(take)));
        rows.add(new Row(
                "trench",
                plan.printed(take.trench(), Unit.CUBIC_YARD) + " dug, " + plan.printed(take.stone(), Unit.CUBIC_YARD)
                        + " of stone around the pipe, " + plan.printed(take.spoil(), Unit.CUBIC_YARD)
                        + " to haul off, all in place"));
        rows.add(new Row("care", care(plan, take)));
        rows.add(new Row(
                "cost", String.format(Locale.ROOT, "%.1f", proposal.cost()) + " by the weights of the rule book"));
        rows.add(new Row("advice", named(proposal.adviceMissed(), "all advice is met", "not met: ")));
        rows.add(new Row("open", named(proposal.open(), "nothing", "")));
        return rows;
    }

    private static String outfall(Proposal proposal) {
        Feature outfall = proposal.analysis().site().features(Role.OUTFALL).get(0);
        String stone = proposal.apron().metres() > 0
                ? ", a stone apron " + proposal.analysis().site().printed(proposal.apron(), Unit.FOOT)
                        + " long below it"
                : "";
        return outfall.id() + " in the "
                + StandingWords.side(outfall.geometry(), proposal.analysis().site()) + stone;
    }

    private static String pipe(Site plan, Quantities take) {
        List<String> parts = new ArrayList<>();
        take.pipe().forEach((size, length) -> parts.add(plan.printed(length.metres()) + " of " + plan.nominal(size)));
        return String.join(", ", parts);
    }

    private static String fittings(Quantities take) {
        List<String> parts = new ArrayList<>();
        take.fittings().forEach((kind, count) -> parts.add(count + " x " + kind));
        return parts.isEmpty() ? "none" : String.join(", ", parts);
    }

    private static String care(Site plan, Quantities take) {
        return "crosses " + take.crossings() + (take.crossings() == 1 ? " utility, " : " utilities, ")
                + plan.printed(take.handDig().metres()) + " dug by hand, "
                + plan.printed(take.roots().metres())
                + " among roots, " + plan.printed(take.paving().metres()) + " under paving";
    }

    private static String named(List<Finding> findings, String none, String before) {
        Set<String> rules = new TreeSet<>();
        findings.forEach(
                finding -> rules.add(finding.rule() + " (" + finding.outcome().spoken() + ")"));
        return rules.isEmpty() ? none : before + String.join(", ", rules);
    }
}
