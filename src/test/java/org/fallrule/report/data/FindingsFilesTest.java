package org.fallrule.report.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.report.Reports.distance;
import static org.fallrule.report.Reports.feature;
import static org.fallrule.report.Reports.finding;
import static org.fallrule.report.Reports.geometry;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/** The findings as JSON, GeoJSON and CSV: format fallrule-findings/1, RFC 7946 and RFC 4180. */
class FindingsFilesTest {
    private static final Feature OUTFALL = feature(Role.OUTFALL, "OF-1", "POINT (0 0)");

    private static JsonNode json(String text) {
        try {
            return new ObjectMapper().readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static List<String> values(JsonNode array, String path) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(item -> item.at(path).asText())
                .toList();
    }

    // findings.json

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void theFindingsFileHasItsNamesInOrder(String sample) {
        JsonNode file = json(FindingsJson.write(Reports.of(sample)));

        assertThat(names(file))
                .containsExactly(
                        "format",
                        "site",
                        "rule_books",
                        "summary",
                        "findings",
                        "problems",
                        "checklist",
                        "may_stand",
                        "tables");
        assertThat(file.get("format").asText()).isEqualTo("fallrule-findings/1");
        assertThat(names(file.get("site"))).startsWith("id", "name", "county").contains("crs");
        assertThat(names(file.get("summary")))
                .containsExactly("meets", "fails", "borderline", "cannot_tell", "not_applicable", "waived");
        assertThat(names(file.get("tables")))
                .containsExactly(
                        "pipes",
                        "inlets",
                        "outfalls",
                        "drops",
                        "crossings",
                        "runoff",
                        "flows",
                        "levels",
                        "outflows",
                        "hose_test");
        for (JsonNode book : file.get("rule_books")) {
            assertThat(names(book)).containsExactly("file", "title", "sha256");
            assertThat(book.get("sha256").asText()).matches("[0-9a-f]{64}");
        }
        for (JsonNode finding : file.get("findings")) {
            List<String> inOrder = new ArrayList<>(List.of(
                    "rule",
                    "title",
                    "check",
                    "weight",
                    "outcome",
                    "subject",
                    "other",
                    "measured",
                    "required",
                    "short_by",
                    "accuracy",
                    "where",
                    "says",
                    "missing",
                    "notes",
                    "basis",
                    "set_by"));
            inOrder.retainAll(names(finding));
            assertThat(names(finding))
                    .isEqualTo(inOrder)
                    .contains("rule", "check", "weight", "outcome", "says", "missing", "basis", "set_by");
        }
    }

    @Test
    void aFindingHasSiValuesBesideTheTextShown() {
        JsonNode finding = json(FindingsJson.write(Reports.with(
                        List.of(finding(Weight.MUST, distance(OUTFALL, 3.5, 0.1).against(OUTFALL))))))
                .at("/findings/0");

        assertThat(finding.at("/subject").toString()).isEqualTo("{\"role\":\"outfall\",\"id\":\"OF-1\"}");
        assertThat(finding.at("/measured").toString())
                .isEqualTo("{\"of\":\"plan distance\",\"value\":1.0668,\"unit\":\"m\",\"shown\":\"3.50 ft\"}");
        assertThat(finding.at("/required").toString())
                .isEqualTo("{\"at_least\":1.524,\"unit\":\"m\",\"shown\":\"5 ft\"}");
        assertThat(finding.at("/short_by").toString())
                .isEqualTo("{\"value\":0.4572,\"unit\":\"m\",\"shown\":\"1.50 ft\"}");
        assertThat(finding.at("/accuracy").toString()).isEqualTo("{\"value\":0.03048,\"unit\":\"m\"}");
        assertThat(finding.at("/set_by").asText()).isEqualTo("rules/baseline.yaml:12");
        assertThat(finding.at("/where/type").asText()).isEqualTo("Point");
        assertThat(finding.at("/where/coordinates/0").asDouble()).isCloseTo(-76.05, within(0.01));
        assertThat(finding.at("/where/coordinates/1").asDouble()).isCloseTo(35.3, within(0.01));
    }

    @Test
    void aProblemSaysItsFileFeatureAndColumn() {
        JsonNode problems = json(FindingsJson.write(Reports.with(
                        List.of(),
                        new Fault(Place.of("a.shp").feature("feature 3").field("DIAM"), "is odd"),
                        new Fault(Place.of("site.yaml").at(4, 2), "is odder"))))
                .get("problems");

        assertThat(problems.get(0).toString())
                .isEqualTo(
                        "{\"file\":\"a.shp\",\"layer\":\"a\",\"feature\":\"feature 3\",\"column\":\"DIAM\",\"says\":\"is odd\"}");
        assertThat(problems.get(1).toString())
                .isEqualTo("{\"file\":\"site.yaml\",\"layer\":\"\",\"feature\":\"\",\"line\":4,\"says\":\"is odder\"}");
    }

    // every form states the same facts

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void everyFormStatesTheSameFacts(String sample) {
        Report report = Reports.of(sample);
        JsonNode file = json(FindingsJson.write(report));
        JsonNode places = json(FindingsGeoJson.write(report)).get("features");
        List<List<String>> table = Csv.parse(FindingsCsv.write(report));
        List<List<String>> rows = table.subList(1, table.size());
        JsonNode findings = file.get("findings");

        assertThat(findings).isNotEmpty().hasSize(report.review().findings().size());
        for (Outcome outcome : Outcome.values()) {
            assertThat(values(findings, "/outcome").stream()
                            .filter(outcome.word()::equals)
                            .count())
                    .isEqualTo(file.get("summary").get(outcome.word()).asLong());
        }
        for (String name : List.of("rule", "outcome", "weight", "says", "set_by")) {
            List<String> column = rows.stream()
                    .map(row -> row.get(table.get(0).indexOf(name)))
                    .toList();
            assertThat(column).isEqualTo(values(findings, "/" + name));
            assertThat(values(places, "/properties/" + name)).isEqualTo(values(findings, "/" + name));
        }
        List<String> shown = rows.stream()
                .map(row -> row.get(table.get(0).indexOf("measured")))
                .toList();
        assertThat(shown).isEqualTo(values(findings, "/measured/shown"));
    }

    // GeoJSON

    @Test
    void ringsAreWoundByTheRightHandRule() {
        String clockwise = "POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 8 2, 8 8, 2 8, 2 2))";
        for (String wkt : List.of(
                clockwise,
                "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0), (2 2, 2 8, 8 8, 8 2, 2 2))",
                "MULTIPOLYGON (((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 8 2, 8 8, 2 8, 2 2)))")) {
            JsonNode shape = where(Observation.plain(Outcome.FAILS, OUTFALL).at(geometry(wkt)));
            JsonNode rings = shape.get("type").asText().equals("Polygon")
                    ? shape.get("coordinates")
                    : shape.at("/coordinates/0");

            assertThat(Orientation.isCCW(ring(rings.get(0)))).as(wkt).isTrue();
            assertThat(Orientation.isCCW(ring(rings.get(1)))).as(wkt).isFalse();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POINT (1 2) | Point",
                "LINESTRING (0 0, 1 1) | LineString",
                "LINEARRING (0 0, 1 1, 1 0, 0 0) | LineString",
                "MULTIPOINT ((0 0), (1 1)) | MultiPoint",
                "MULTILINESTRING ((0 0, 1 1), (2 2, 3 3)) | MultiLineString",
                "GEOMETRYCOLLECTION (POINT (0 0), LINESTRING (0 0, 1 1)) | GeometryCollection",
            })
    void everyGeometryHasATypeOfRfc7946(String wkt, String type) {
        assertThat(where(Observation.plain(Outcome.FAILS, OUTFALL).at(geometry(wkt)))
                        .get("type")
                        .asText())
                .isEqualTo(type);
    }

    @ParameterizedTest
    @ValueSource(strings = {"POINT EMPTY", "POLYGON EMPTY", "GEOMETRYCOLLECTION EMPTY"})
    void whatHasNoPlaceHasANullGeometry(String wkt) {
        Observation seen = Observation.plain(Outcome.FAILS, OUTFALL).at(geometry(wkt));

        assertThat(where(seen).isNull()).isTrue();
        assertThat(names(json(FindingsJson.write(Reports.with(List.of(finding(Weight.MUST, seen)))))
                        .at("/findings/0")))
                .doesNotContain("where");
    }

    private static JsonNode where(Observation seen) {
        return json(FindingsGeoJson.write(Reports.with(List.of(finding(Weight.MUST, seen)))))
                .at("/features/0/geometry");
    }

    private static Coordinate[] ring(JsonNode positions) {
        return StreamSupport.stream(positions.spliterator(), false)
                .map(position -> new Coordinate(
                        position.get(0).asDouble(), position.get(1).asDouble()))
                .toArray(Coordinate[]::new);
    }

    @Test
    void aFeatureCollectionHasOnlyWhatRfc7946Names() {
        JsonNode file = json(FindingsGeoJson.write(Reports.of("harrow-14")));
        Set<String> members = new TreeSet<>();
        file.get("features").forEach(feature -> members.addAll(names(feature)));

        assertThat(names(file)).containsExactly("type", "features");
        assertThat(members).containsExactly("geometry", "properties", "type");
        assertThat(file.get("features"))
                .allSatisfy(feature -> assertThat(feature.get("properties")).allMatch(value -> value.isValueNode()));
    }

    // CSV

    @Test
    void everyRowOfTheTableHasEveryColumnAndEndsInCrLf() {
        String text = FindingsCsv.write(Reports.of("harrow-14"));

        assertThat(text).endsWith("\r\n").startsWith("\uFEFFsite,rule,check,weight,outcome,");
        assertThat(Csv.parse(text)).allMatch(row -> row.size() == 15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a,b", "a\"b", "\"", "a;b", ",,,", "plain", "ünï"})
    void namesComeBackAsTheyWere(String id) {
        assertThat(subject(id)).isEqualTo("outfall " + id);
    }

    @ParameterizedTest
    @CsvSource({"'a\nb',a b", "'a\r\nb',a  b", "'a\u001b[2Jb',a [2Jb", "'a\u0000b',a b"})
    void controlCharactersBecomeBlanksSoThatEachRowIsALine(String id, String cell) {
        assertThat(subject(id)).isEqualTo("outfall " + cell);
    }

    private static String subject(String id) {
        Finding finding = finding(Weight.MUST, distance(feature(Role.OUTFALL, id, "POINT (0 0)"), 3.5, 0));
        List<List<String>> table = Csv.parse(FindingsCsv.write(Reports.with(List.of(finding))));
        return table.get(1).get(table.get(0).indexOf("subject"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "@SUM(A1)", " =1+1", "\t=1+1", "＝1", "-2+3+cmd|' /C calc'!A0"})
    void aCellThatASpreadsheetWouldCalculateIsMadeText(String document) {
        Report report = Reports.of("harrow-14");
        Report renamed = new Report(
                SiteAnalysis.of(
                        named(report.site(), document), report.analysis().locality()),
                report.county(),
                report.book(),
                report.review());

        assertThat(Csv.parse(FindingsCsv.write(renamed)).get(1).get(0))
                .startsWith("'")
                .endsWith(document.replace('\t', ' '));
    }

    private static org.fallrule.site.Site named(org.fallrule.site.Site site, String id) {
        return new org.fallrule.site.Site(
                id,
                site.name(),
                site.county(),
                site.house(),
                site.crs(),
                site.datum(),
                site.frame(),
                site.survey(),
                site.layers(),
                site.waivers(),
                site.problems());
    }

    @Test
    void aNegativeValueStaysANumberWithItsUnit() {
        List<List<String>> table = Csv.parse(FindingsCsv.write(Reports.of("harrow-14")));
        int measured = table.get(0).indexOf("measured");

        assertThat(table).extracting(row -> row.get(measured)).contains("-0.51 %");
    }

    @Test
    void aCrossingIsARowOfItsTable() {
        JsonNode rows =
                json(FindingsJson.write(Reports.of("harrow-14"))).get("tables").get("crossings");

        assertThat(values(rows, "/utility")).containsExactly("M07", "M08", "M06", "M02", "M09");
        JsonNode electric = rows.get(0);
        assertThat(names(electric))
                .startsWith("pipe", "station", "utility", "kind", "size", "quality", "depth", "depth_relied_on")
                .endsWith("drain", "gap", "angle", "outcome", "call");
        assertThat(electric.at("/station/value").asDouble()).isCloseTo(16.5 * 0.3048, within(0.01));
        assertThat(electric.at("/angle/value").asDouble()).isCloseTo(Math.PI / 2, within(1e-3));
        assertThat(electric.at("/drain").asText()).isEqualTo("above");
        assertThat(electric.at("/call").asText()).isEqualTo("one-call 811");
    }
}
