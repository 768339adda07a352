package org.fallrule.report.data;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Printed;
import org.fallrule.remedy.Remedies;
import org.fallrule.report.Sentence;
import org.fallrule.site.Feature;

/** One finding as a tree of names and values. */
final class FindingTree {
    private final GeoShape shapes;
    private final Remedies remedies;
    private final IdentityHashMap<Basis, JsonWriter.Repeated> bases = new IdentityHashMap<>();

    FindingTree(GeoShape shapes, Remedies remedies) {
        this.shapes = shapes;
        this.remedies = remedies;
    }

    Map<String, Object> of(Finding finding) {
        Observation seen = finding.observation();
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("rule", finding.rule());
        tree.put("title", finding.title());
        tree.put("check", finding.check());
        tree.put("weight", finding.weight().word());
        tree.put("outcome", finding.outcome().word());
        seen.subject().ifPresent(subject -> tree.put("subject", feature(subject)));
        seen.other().ifPresent(other -> tree.put("other", feature(other)));
        seen.measured().ifPresent(measured -> measured(measured, tree));
        seen.where().filter(where -> !where.isEmpty()).ifPresent(where -> tree.put("where", shapes.of(where)));
        tree.put("says", Sentence.of(finding));
        tree.put("missing", seen.missing().stream().map(FindingTree::missing).toList());
        tree.put("notes", new ArrayList<>(seen.notes()));
        tree.put("basis", bases.computeIfAbsent(finding.basis(), FindingTree::basis));
        tree.put("set_by", finding.setBy().fileAndLine());
        remedies.of(finding)
                .ifPresent(remedy -> tree.put("remedy", ordered("says", remedy.says(), "proved", remedy.proved())));
        return tree;
    }

    private static Map<String, Object> feature(Feature feature) {
        return ordered("role", feature.role().word(), "id", feature.id());
    }

    private static Map<String, Object> missing(Missing missing) {
        return ordered("what", missing.what(), "settled_by", missing.settledBy());
    }

    private static void measured(Measured measured, Map<String, Object> tree) {
        Dimension dimension = measured.value().dimension();
        String unit = dimension.siSymbol();
        tree.put(
                "measured",
                ordered(
                        "of",
                        measured.of(),
                        "value",
                        rounded(measured.value().si(), dimension),
                        "unit",
                        unit,
                        "shown",
                        Sentence.shown(measured)));
        measured.limit().ifPresent(limit -> tree.put("required", required(measured, limit, unit)));
        Sentence.shortBy(measured)
                .ifPresent(shown -> tree.put(
                        "short_by",
                        ordered(
                                "value",
                                rounded(
                                        measured.limit()
                                                .map(limit -> limit.shortfall(measured.value()))
                                                .orElse(0.0),
                                        dimension),
                                "unit",
                                unit,
                                "shown",
                                shown)));
        if (measured.accuracy() > 0) {
            tree.put("accuracy", ordered("value", rounded(measured.accuracy(), dimension), "unit", unit));
        }
    }

    private static Map<String, Object> required(Measured measured, Limit limit, String unit) {
        return ordered(
                limit.bound().name().toLowerCase(java.util.Locale.ROOT),
                rounded(limit.value().quantity().si(), limit.value().quantity().dimension()),
                "unit",
                unit,
                "shown",
                Printed.limit(limit.value(), measured.metric()));
    }

    private static JsonWriter.Repeated basis(Basis basis) {
        Map<String, Object> tree = ordered("kind", basis.kind().word());
        basis.document().ifPresent(document -> tree.put("document", document));
        basis.section().ifPresent(section -> tree.put("section", section));
        basis.known().ifPresent(known -> tree.put("known", known));
        basis.note().ifPresent(note -> tree.put("note", note));
        tree.put("stated_at", basis.statedAt().fileAndLine());
        return new JsonWriter.Repeated(tree);
    }

    /**
     * A value in SI to nine decimals, a millionth of a millimetre, and as finely in dimensions whose values are small: what
     * lies beyond is noise of the arithmetic, and differs from one processor to the next.
     */
    static double rounded(double si, Dimension dimension) {
        double steps = dimension.tolerance() < 1e-7 ? 1e15 : 1e9;
        return Math.round(si * steps) / steps;
    }

    static Map<String, Object> ordered(Object... namesAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        List<Object> items = List.of(namesAndValues);
        for (int i = 0; i < items.size(); i += 2) {
            map.put(String.valueOf(items.get(i)), items.get(i + 1));
        }
        return map;
    }
}
