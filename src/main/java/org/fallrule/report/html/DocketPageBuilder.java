package org.fallrule.report.html;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.finding.Outcome;
import org.fallrule.locality.Climate;
import org.fallrule.report.Cautions;
import org.fallrule.report.docket.Docket;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.DocketMap;
import org.fallrule.report.docket.RuleStanding;
import org.fallrule.report.docket.RuleTally;
import org.fallrule.report.map.PlainText;

/** Makes what the page over many sites shows. */
final class DocketPageBuilder {
    /** Rows that are written out, for whoever has no script and for paper; choosing looks at all plans. */
    static final int WRITTEN_OUT = 200;
    /** Plans up to this many have a column each in the heat table. */
    static final int MOST_COLUMNS = 60;

    private static final int MOST_FAILING = 10;
    private static final int MOST_SAID = 3;

    private final Docket docket;
    private final String report;
    private final List<DocketEntry> byNeed;
    private final List<RuleTally> rules;

    DocketPageBuilder(Docket docket, String report) {
        this.docket = docket;
        this.report = report;
        this.byNeed = docket.byNeed();
        this.rules = docket.rules();
    }

    DocketPage page() {
        List<DocketPage.SiteRow> rows = new ArrayList<>();
        byNeed.forEach(entry -> rows.add(row(rows.size() + 1, entry)));
        List<RuleTally> open = rules.stream().filter(rule -> rule.open() > 0).toList();
        return new DocketPage(
                PageText.ofDocket(),
                byNeed.size() + (byNeed.size() == 1 ? " plan" : " plans"),
                docket.day(),
                docket.needs().entrySet().stream()
                        .map(each -> new DocketPage.NeedCount(NeedSign.of(each.getKey()), each.getValue()))
                        .toList(),
                rows.subList(0, Math.min(WRITTEN_OUT, rows.size())),
                byNeed.size(),
                counties(),
                docket.mostFailing().stream()
                        .limit(MOST_FAILING)
                        .map(DocketPageBuilder::failing)
                        .toList(),
                open.stream().map(isWide() ? this::counted : this::each).toList(),
                isWide() ? List.of() : heads(),
                rules.size() - open.size(),
                DocketMap.of(byNeed),
                byNeed.stream().filter(entry -> entry.lot().isEmpty()).count(),
                docket.notices().stream().map(PlainText::of).toList(),
                Cautions.in(Climate.UNSAID),
                DocketData.of(byNeed, rows, rules));
    }

    private boolean isWide() {
        return byNeed.size() > MOST_COLUMNS;
    }

    private List<String> counties() {
        return byNeed.stream()
                .map(DocketEntry::county)
                .filter(county -> !county.isEmpty())
                .map(PlainText::of)
                .distinct()
                .sorted()
                .toList();
    }

    private DocketPage.SiteRow row(int number, DocketEntry entry) {
        return new DocketPage.SiteRow(
                number,
                PlainText.of(entry.name()),
                PlainText.of(entry.path()),
                entry.isBroken() ? "" : address(entry.folder()),
                NeedSign.of(entry.need()),
                entry.shown(entry.binding()),
                entry.shown(entry.open()),
                entry.shown(entry.advice()),
                PlainText.of(entry.county()),
                says(entry));
    }

    /** The first few rules that need a person, binding failures first; or the first causes. */
    private static List<String> says(DocketEntry entry) {
        List<String> all = entry.isBroken()
                ? entry.causes()
                : needing(entry).map(RuleStanding::title).toList();
        List<String> said =
                new ArrayList<>(all.stream().limit(MOST_SAID).map(PlainText::of).toList());
        if (all.size() > MOST_SAID) {
            said.add("and " + (all.size() - MOST_SAID) + " more");
        }
        return said;
    }

    private static Stream<RuleStanding> needing(DocketEntry entry) {
        return entry.standings().stream()
                .filter(RuleStanding::isOpen)
                .sorted(java.util.Comparator.comparing((RuleStanding each) -> !each.failsPlan())
                        .thenComparing(RuleStanding::weight)
                        .thenComparing(RuleStanding::outcome));
    }

    /** A relative address; every byte that means something in an address is escaped (RFC 3986, section 2.1). */
    private String address(String folder) {
        StringBuilder address = new StringBuilder("./");
        for (byte each : folder.getBytes(StandardCharsets.UTF_8)) {
            boolean plain = each == '-' || each == '_' || each == '.' || (each > 0 && Character.isLetterOrDigit(each));
            address.append(plain ? String.valueOf((char) each) : String.format("%%%02X", each));
        }
        return address.append('/').append(report).toString();
    }

    private static DocketPage.FailingRow failing(RuleTally rule) {
        long plans = rule.plans(Outcome.FAILS);
        return new DocketPage.FailingRow(
                PlainText.of(rule.rule()),
                PlainText.of(rule.title()),
                rule.weight().word(),
                plans,
                rule.all(),
                Math.round(100.0 * plans / rule.all()),
                tint(plans, rule.all()));
    }

    /** From 0, none, to 10, all; whatever is not none is at least 1. */
    private static int tint(long part, long all) {
        return (int) Math.ceil(10.0 * part / all);
    }

    private List<DocketPage.HeatHead> heads() {
        List<DocketPage.HeatHead> heads = new ArrayList<>();
        for (DocketEntry entry : byNeed) {
            heads.add(new DocketPage.HeatHead(heads.size() + 1, PlainText.of(entry.name())));
        }
        return heads;
    }

    private DocketPage.HeatRow each(RuleTally rule) {
        List<DocketPage.HeatCell> cells = byNeed.stream()
                .map(entry -> entry.standings().stream()
                        .filter(standing -> standing.rule().equals(rule.rule()))
                        .findFirst()
                        .map(standing -> OutcomeSign.of(standing.outcome()))
                        .map(sign -> new DocketPage.HeatCell("heat " + sign.word(), sign.sign(), sign.spoken()))
                        .orElse(new DocketPage.HeatCell("heat", "", "not asked")))
                .toList();
        return heatRow(rule, cells);
    }

    private DocketPage.HeatRow counted(RuleTally rule) {
        List<DocketPage.HeatCell> cells = Stream.of(Outcome.values())
                .map(outcome -> new DocketPage.HeatCell(
                        "n t" + tint(rule.plans(outcome), rule.all()), String.valueOf(rule.plans(outcome)), ""))
                .toList();
        return heatRow(rule, cells);
    }

    private static DocketPage.HeatRow heatRow(RuleTally rule, List<DocketPage.HeatCell> cells) {
        return new DocketPage.HeatRow(
                PlainText.of(rule.rule()),
                PlainText.of(rule.title()),
                rule.weight().word(),
                cells);
    }
}
