package org.fallrule.report.data;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.fallrule.comparison.Change;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.DataChange;
import org.fallrule.comparison.FindingChange;
import org.fallrule.comparison.Submittal;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.remedy.Remedies;
import org.fallrule.report.comparison.ChangeWords;
import org.fallrule.report.comparison.ComparisonReport;
import org.fallrule.site.Feature;

/** The comparison file, format {@code fallrule-comparison/1}: findings as in the findings file, places in WGS 84. */
public final class ComparisonJson {
    private final Comparison comparison;
    private final FindingTree findings;

    private ComparisonJson(Comparison comparison) {
        this.comparison = comparison;
        this.findings = new FindingTree(new GeoShape(comparison.after().site().frame()), Remedies.NONE);
    }

    public static String write(ComparisonReport report) {
        return JsonWriter.write(new ComparisonJson(report.comparison()).tree(report));
    }

    private Map<String, Object> tree(ComparisonReport report) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", "fallrule-comparison/1");
        tree.put("before", state(comparison.before()));
        tree.put("after", state(comparison.after()));
        tree.put("rules", report.rules());
        tree.put("verdict", comparison.verdict());
        tree.put("fails", comparison.fails());
        tree.put("got_worse", comparison.gotWorse());
        tree.put("counts", counts());
        tree.put("findings", comparison.findings().stream().map(this::change).toList());
        tree.put("as_built", comparison.asBuilt().stream().map(findings::of).toList());
        tree.put("data", comparison.data().stream().map(ComparisonJson::change).toList());
        tree.put(
                "problems",
                report.problems().stream()
                        .map(fault -> FindingTree.ordered("where", fault.where().toString(), "says", fault.says()))
                        .toList());
        return tree;
    }

    private static Map<String, Object> state(Submittal state) {
        Map<String, Object> tree = FindingTree.ordered(
                "id",
                state.site().id(),
                "name",
                state.site().name(),
                "crs",
                state.site().crs());
        state.site().datum().ifPresent(datum -> tree.put("datum", datum));
        tree.put("plan", state.isPlan());
        tree.put(
                "rule_books",
                state.book().books().stream()
                        .map(book -> FindingTree.ordered(
                                "file", book.file(), "title", book.title(), "sha256", book.sha256()))
                        .toList());
        Map<String, Object> summary = new LinkedHashMap<>();
        for (Outcome outcome : Outcome.values()) {
            summary.put(outcome.word(), state.review().count(outcome));
        }
        tree.put("summary", summary);
        return tree;
    }

    private Map<String, Object> counts() {
        Map<String, Object> counts = new LinkedHashMap<>();
        for (Change change : Change.values()) {
            counts.put(change.word(), comparison.with(change).size());
        }
        return counts;
    }

    /** Of what has not changed only the later state is written. */
    private Map<String, Object> change(FindingChange change) {
        Map<String, Object> tree = FindingTree.ordered("change", change.change().word(), "why", change.why());
        Optional<Finding> before =
                change.change() == Change.UNCHANGED && change.after().isPresent() ? Optional.empty() : change.before();
        before.ifPresent(finding -> tree.put("before", findings.of(finding)));
        change.after().ifPresent(finding -> tree.put("after", findings.of(finding)));
        return tree;
    }

    private static Map<String, Object> change(DataChange change) {
        Map<String, Object> tree = FindingTree.ordered("kind", change.kind().word(), "about", change.about());
        change.feature().ifPresent(feature -> tree.put("feature", feature(feature)));
        if (!change.what().isEmpty()) {
            tree.put("what", change.what());
        }
        change.from().ifPresent(from -> tree.put("from", from));
        change.to().ifPresent(to -> tree.put("to", to));
        change.by()
                .ifPresent(by -> tree.put(
                        "by",
                        new ShownQuantity(
                                by.by().metres(), Dimension.LENGTH, (by.by().metres() < 0 ? "-" : "") + by.shown())));
        tree.put("says", ChangeWords.of(change));
        return tree;
    }

    private static Map<String, Object> feature(Feature feature) {
        return FindingTree.ordered("role", feature.role().word(), "id", feature.id());
    }
}
