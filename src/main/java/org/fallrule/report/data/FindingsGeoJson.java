package org.fallrule.report.data;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.report.RemedyWords;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.site.Feature;

/** The findings as places for a desktop GIS: RFC 7946, one feature a finding, flat properties. */
public final class FindingsGeoJson {
    private FindingsGeoJson() {}

    public static String write(Report report) {
        GeoShape shapes = new GeoShape(report.site().frame());
        return JsonWriter.write(FindingTree.ordered(
                "type",
                "FeatureCollection",
                "features",
                Stream.concat(
                                report.review().findings().stream().map(finding -> feature(report, finding, shapes)),
                                new StandingTree(report).features().stream())
                        .toList()));
    }

    private static Map<String, Object> feature(Report report, Finding finding, GeoShape shapes) {
        Map<String, Object> feature = FindingTree.ordered("type", "Feature");
        feature.put(
                "geometry",
                finding.observation()
                        .where()
                        .filter(where -> !where.isEmpty())
                        .map(shapes::of)
                        .orElse(null));
        feature.put("properties", properties(report, finding));
        return feature;
    }

    private static Map<String, Object> properties(Report report, Finding finding) {
        Observation seen = finding.observation();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("rule", finding.rule());
        row.put("weight", finding.weight().word());
        row.put("outcome", finding.outcome().word());
        row.put("subject", seen.subject().map(Feature::spoken).orElse(null));
        row.put("other", seen.other().map(Feature::spoken).orElse(null));
        row.put("measured", seen.measured().map(Sentence::shown).orElse(null));
        row.put("required", seen.measured().flatMap(Sentence::asked).orElse(null));
        row.put("short_by", seen.measured().flatMap(Sentence::shortBy).orElse(null));
        row.put(
                "value_si",
                seen.measured()
                        .map(Measured::value)
                        .map(value -> FindingTree.rounded(value.si(), value.dimension()))
                        .orElse(null));
        row.put("says", Sentence.of(finding));
        row.put("remedy", RemedyWords.line(report, finding).orElse(null));
        row.put("set_by", finding.setBy().fileAndLine());
        return row;
    }
}
