package org.fallrule.report.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.Fault;
import org.fallrule.document.JsonWriter;
import org.fallrule.document.Place;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.remedy.JointChange;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.checklist.Checklist;
import org.fallrule.report.checklist.ChecklistEntry;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** The findings file, format {@code fallrule-findings/1}: SI values beside the text shown, places in WGS 84. */
public final class FindingsJson {
    private FindingsJson() {}

    public static String write(Report report) {
        return JsonWriter.write(tree(report));
    }

    /** The same as the file holds it. */
    public static byte[] bytes(Report report) {
        return JsonWriter.bytes(tree(report));
    }

    private static Map<String, Object> tree(Report report) {
        FindingTree findings = new FindingTree(new GeoShape(report.site().frame()), report.remedies());
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", "fallrule-findings/1");
        tree.put("site", site(report.site(), report.county()));
        tree.put(
                "rule_books",
                report.book().books().stream().map(FindingsJson::book).toList());
        tree.put("summary", summary(report));
        List<Finding> all = report.review().findings();
        tree.put("findings", all.stream().map(findings::of).toList());
        report.remedies().joint().ifPresent(joint -> tree.put("joint_remedy", joint(joint)));
        tree.put(
                "problems",
                report.review().problems().stream().map(FindingsJson::problem).toList());
        tree.put(
                "checklist",
                Checklist.of(report).stream().map(FindingsJson::item).toList());
        tree.put("may_stand", new StandingTree(report).rows());
        tree.put("tables", new Tables(report).tree());
        return tree;
    }

    private static Map<String, Object> joint(JointChange joint) {
        return FindingTree.ordered(
                "says",
                RemedyWords.joint(joint),
                "changes",
                joint.changes(),
                "passes",
                joint.passed().stream().map(FindingsJson::passed).toList());
    }

    private static Map<String, Object> passed(Finding finding) {
        Map<String, Object> tree = FindingTree.ordered("rule", finding.rule());
        finding.observation().subject().ifPresent(subject -> tree.put("subject", subject.spoken()));
        finding.observation().other().ifPresent(other -> tree.put("other", other.spoken()));
        return tree;
    }

    private static Map<String, Object> item(ChecklistEntry entry) {
        return FindingTree.ordered(
                "id",
                entry.item().id(),
                "asks",
                entry.item().asks(),
                "asked",
                entry.item().asked().word(),
                "stands",
                entry.standing().word(),
                "says",
                entry.says(),
                "settled_by",
                entry.settledBy(),
                "set_by",
                entry.item().setBy().fileAndLine());
    }

    private static Map<String, Object> site(Site site, String county) {
        Map<String, Object> tree = FindingTree.ordered("id", site.id(), "name", site.name(), "county", county);
        site.house().ifPresent(house -> tree.put("house", house));
        tree.put("crs", site.crs());
        site.datum().ifPresent(datum -> tree.put("datum", datum));
        return tree;
    }

    private static Map<String, Object> book(RuleBook.Source book) {
        return FindingTree.ordered("file", book.file(), "title", book.title(), "sha256", book.sha256());
    }

    private static Map<String, Object> summary(Report report) {
        Map<String, Object> counts = new LinkedHashMap<>();
        for (Outcome outcome : List.of(
                Outcome.MEETS,
                Outcome.FAILS,
                Outcome.BORDERLINE,
                Outcome.CANNOT_TELL,
                Outcome.NOT_APPLICABLE,
                Outcome.WAIVED)) {
            counts.put(outcome.word(), report.review().count(outcome));
        }
        return counts;
    }

    /** Where a fault stands and what it says. A file of one layer gives the layer its name; a YAML file has none. */
    private static Map<String, Object> problem(Fault fault) {
        Place where = fault.where();
        Map<String, Object> tree =
                FindingTree.ordered("file", where.file(), "layer", layer(where.file()), "feature", where.feature());
        if (!where.field().isEmpty()) {
            tree.put("column", where.field());
        }
        if (where.line() > 0) {
            tree.put("line", where.line());
        }
        tree.put("says", fault.says());
        return tree;
    }

    private static String layer(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1);
        int ending = name.lastIndexOf('.');
        return ending < 0 || name.endsWith(".yaml") ? "" : name.substring(0, ending);
    }
}
