package org.fallrule.report.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.JsonWriter;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Dimension;
import org.fallrule.remedy.Remedies;
import org.fallrule.report.Reading;
import org.fallrule.report.Sentence;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Geometry;

/** Findings as parts of a tree of names and values. */
final class FindingTree {
    private final Remedies remedies;
    private final MeasuredMembers values = new MeasuredMembers();
    private final SharedMembers<Heading> headings = SharedMembers.ofEqual(Heading::members);
    private final SharedMembers<Feature> subjects = SharedMembers.ofSame(each -> ordered("subject", feature(each)));
    private final SharedMembers<Feature> others = SharedMembers.ofSame(each -> ordered("other", feature(each)));
    private final SharedMembers<Geometry> places;
    private final SharedMembers<Basis> bases = SharedMembers.ofSame(each -> ordered("basis", basis(each)));
    private final SharedMembers<Place> lines = SharedMembers.ofSame(each -> ordered("set_by", each.fileAndLine()));

    /** What a finding has in common with others of its rule. */
    private record Heading(String rule, String title, String check, Weight weight) {

        static Heading of(Finding finding) {
            return new Heading(finding.rule(), finding.title(), finding.check(), finding.weight());
        }

        /** Of what mostly tells them apart. */
        @Override
        public int hashCode() {
            return rule.hashCode();
        }

        Map<String, Object> members() {
            return ordered("rule", rule, "title", title, "check", check, "weight", weight.word());
        }
    }

    FindingTree(GeoShape shapes, Remedies remedies) {
        this.places = SharedMembers.ofEqual(where -> ordered("where", shapes.of(where)));
        this.remedies = remedies;
    }

    JsonWriter.Part of(Finding finding) {
        return json -> put(finding, json);
    }

    private void put(Finding finding, JsonWriter json) {
        Observation seen = finding.observation();
        Optional<Reading> reading = seen.measured().map(Reading::of);
        json.putAll(headings.of(Heading.of(finding)));
        json.put("outcome", finding.outcome().word());
        seen.subject().map(subjects::of).ifPresent(json::putAll);
        seen.other().map(others::of).ifPresent(json::putAll);
        reading.ifPresent(measured -> values.put(measured, json));
        seen.where().filter(where -> !where.isEmpty()).map(places::of).ifPresent(json::putAll);
        json.put("says", Sentence.of(finding, reading));
        json.put("missing", missing(seen.missing()));
        json.put("notes", seen.notes());
        json.putAll(bases.of(finding.basis()));
        json.putAll(lines.of(finding.setBy()));
        remedies.of(finding)
                .ifPresent(remedy -> json.put("remedy", ordered("says", remedy.says(), "proved", remedy.proved())));
    }

    private static Map<String, Object> feature(Feature feature) {
        return ordered("role", feature.role().word(), "id", feature.id());
    }

    private static List<Object> missing(List<Missing> missing) {
        List<Object> rows = new ArrayList<>(missing.size());
        missing.forEach(each -> rows.add(ordered("what", each.what(), "settled_by", each.settledBy())));
        return rows;
    }

    private static Map<String, Object> basis(Basis basis) {
        Map<String, Object> tree = ordered("kind", basis.kind().word());
        basis.document().ifPresent(document -> tree.put("document", document));
        basis.section().ifPresent(section -> tree.put("section", section));
        basis.known().ifPresent(known -> tree.put("known", known));
        basis.note().ifPresent(note -> tree.put("note", note));
        tree.put("stated_at", basis.statedAt().fileAndLine());
        return tree;
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
        for (int i = 0; i < namesAndValues.length; i += 2) {
            map.put(String.valueOf(namesAndValues[i]), namesAndValues[i + 1]);
        }
        return map;
    }
}
