package org.fallrule.report.proposal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.proposal.Hindrance;
import org.fallrule.proposal.Proposal;
import org.fallrule.proposal.Proposals;
import org.fallrule.proposal.Quantities;
import org.fallrule.report.Cautions;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** Proposed lines as JSON: what each takes to build, in SI. The lines themselves are layers of the site folders beside it. */
public final class ProposalJson {
    private ProposalJson() {}

    /**
     * The proposals as one document.
     *
     * @param without rules that were left out of account
     */
    public static String write(SiteAnalysis analysis, RuleBook book, Proposals proposals, Set<String> without) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", "fallrule-proposals/1");
        tree.put("site", analysis.site().id());
        tree.put("without", List.copyOf(without));
        List<Map<String, Object>> all = new ArrayList<>();
        for (Proposal proposal : proposals.proposals()) {
            all.add(proposal(proposal, "proposal-" + (all.size() + 1)));
        }
        tree.put("proposals", all);
        tree.put(
                "in_the_way",
                proposals.hindrances().stream().map(ProposalJson::hindrance).toList());
        tree.put("cautions", Cautions.in(book.locality().climate()));
        return JsonWriter.write(tree);
    }

    private static Map<String, Object> proposal(Proposal proposal, String folder) {
        Quantities take = proposal.quantities();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("folder", folder);
        tree.put("course", proposal.course().name().toLowerCase(Locale.ROOT));
        tree.put("cost", rounded(proposal.cost()));
        tree.put(
                "pipe",
                take.pipe().entrySet().stream()
                        .map(each -> pipe(proposal.analysis().site().nominal(each.getKey()), each.getValue()))
                        .toList());
        tree.put("fittings", take.fittings());
        tree.put("trench_m3", rounded(take.trench().cubicMetres()));
        tree.put("stone_m3", rounded(take.stone().cubicMetres()));
        tree.put("spoil_m3", rounded(take.spoil().cubicMetres()));
        tree.put("hand_dig_m", rounded(take.handDig().metres()));
        tree.put("crossings", take.crossings());
        tree.put("roots_m", rounded(take.roots().metres()));
        tree.put("paving_m", rounded(take.paving().metres()));
        tree.put("apron_m", rounded(proposal.apron().metres()));
        tree.put(
                "pipes",
                proposal.analysis().network().runs().stream()
                        .map(run -> run(proposal.analysis().site(), run))
                        .toList());
        tree.put("advice_missed", rules(proposal.adviceMissed()));
        tree.put("open", rules(proposal.open()));
        return tree;
    }

    private static Map<String, Object> pipe(String size, Length length) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("size", size);
        row.put("length_m", rounded(length.metres()));
        return row;
    }

    private static Map<String, Object> run(Site plan, PipeRun run) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", run.id());
        row.put("size", run.diameter().map(plan::nominal).orElse(""));
        row.put("length_m", rounded(run.length().metres()));
        row.put("slope", run.slope().map(slope -> rounded(slope.ratio())).orElse(0.0));
        return row;
    }

    private static List<String> rules(List<Finding> findings) {
        return findings.stream().map(Finding::rule).distinct().sorted().toList();
    }

    private static Map<String, Object> hindrance(Hindrance hindrance) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("rule", hindrance.rule());
        row.put("title", hindrance.title());
        row.put("set_by", hindrance.setBy().fileAndLine());
        row.put("how", hindrance.spoken());
        return row;
    }

    private static double rounded(double value) {
        return Math.round(value * 1e4) / 1e4;
    }
}
