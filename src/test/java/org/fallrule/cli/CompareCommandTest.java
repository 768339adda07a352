package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two submittals of a sample, and its plan and work as built. */
class CompareCommandTest {
    private static final Path PLAN = Path.of("sample-sites", "quillfeather-8");
    private static final String OUTFALL = "-76.0499586379, 35.3000254638";

    @TempDir
    Path place;

    private SiteOnDisk after;

    @BeforeEach
    void copy() {
        after = SiteOnDisk.copied("quillfeather-8", place);
    }

    private static Ran compare(Object... words) {
        return Ran.command(Stream.concat(Stream.of("compare", "--today", "2026-06-01"), Stream.of(words))
                .toArray());
    }

    /** The outfall 4 ft nearer to the public walk, and the last pipe with it. */
    private void moveOutfall() {
        after.replacing("outfall.geojson", OUTFALL, "-76.0499556379, 35.3000145638");
        after.replacing("pipe.geojson", OUTFALL, "-76.0499556379, 35.3000145638");
    }

    @Test
    void theSamePlanTwiceIsUnchanged() {
        Ran ran = compare(PLAN, after.path());

        assertThat(ran.out())
                .contains("Nothing binding fails now, 0 gone, 0 new, 0 better, 0 worse.")
                .contains("Rules of saltmeadow, applied to both, as the later state has them.")
                .doesNotContain("CHANGED DATA");
        assertThat(ran.code()).isZero();
    }

    @Test
    void anOutfallMovedTowardTheWalkIsWorseOneMovedBackIsGone() {
        moveOutfall();

        Ran worse = compare(PLAN, after.path());
        Ran gone = compare(after.path(), PLAN);

        assertThat(worse.out())
                .contains(
                        "WORSE (",
                        "outfall-walk-setback (must): meets, now fails",
                        "outfall OF-1: moved 4.07 ft in plan");
        assertThat(worse.code()).isEqualTo(1);
        assertThat(gone.out()).contains("GONE (", "outfall-walk-setback (must): fails, now meets");
        assertThat(gone.code()).isZero();
    }

    @Test
    void theTextFitsEightyColumns() {
        moveOutfall();

        assertThat(compare(PLAN, after.path()).out().lines().filter(line -> line.length() > 80))
                .isEmpty();
    }

    @Test
    void whatFailsInBothStillGivesOne() {
        Ran ran = compare("sample-sites/harrow-14", "sample-sites/harrow-14", "--quiet");

        assertThat(ran.out()).contains("failing now, 0 gone, 0 new, 0 better, 0 worse.");
        assertThat(ran.code()).isEqualTo(1);
    }

    @Test
    void theRulesOfTheLaterStateAreAppliedToBoth() {
        after.replacing("site.yaml", "county: saltmeadow", "county: larkmoor");

        Ran both = compare(PLAN, after.path());
        Ran own = compare(PLAN, after.path(), "--own-rules");

        assertThat(both.out())
                .contains("Rules of larkmoor, applied to both", "the site, county: saltmeadow, now larkmoor")
                .contains("0 gone, 0 new, 0 better, 0 worse");
        assertThat(own.out().replaceAll("\\s+", " "))
                .contains("before those of saltmeadow, after those of larkmoor")
                .doesNotContain("0 new, 0 better, 0 worse");
    }

    @Test
    void twoSitesAreRefused() {
        Ran ran = compare(PLAN, "sample-sites/harrow-14");

        assertThat(ran.err()).contains("km from harrow-14, so that the two are not of one site");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void aStateThatCannotBeReadIsSaidSo() {
        Ran ran = compare(PLAN, place.resolve("nowhere"));

        assertThat(ran.err()).contains("there is no such folder");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void aFolderInsideOfASiteIsRefused() {
        Ran ran = compare(PLAN, after.path(), "--out", after.path("out"));

        assertThat(ran.err()).contains("lies inside of the site");
        assertThat(ran.code()).isEqualTo(2);
    }

    private static void built(SiteOnDisk site, String... files) {
        for (String file : files) {
            site.replacing(file, "\"properties\": {\"id\"", "\"properties\": {\"status\": \"as_built\", \"id\"");
        }
    }

    @Test
    void aPlanAndTheWorkAsBuilt() {
        built(after, "pipe.geojson", "inlet.geojson", "outfall.geojson", "cleanout.geojson");
        after.replacing("pipe.geojson", "\"invert_up\": 6.7,", "\"invert_up\": 6.9,");

        Ran ran = compare(PLAN, after.path());

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        "as-built-invert (should) fails Pipe P-5: invert up off by 0.20 ft, at most 0.1 ft asked, 0.10 ft"
                                + " over; designed 6.70 ft, built 6.90 ft, too high.")
                .doesNotContain("status: not said");
        assertThat(ran.code()).isEqualTo(1);
    }

    @Test
    void aTableOfSurveyedPointsWillDoForTheWorkAsBuilt() {
        SiteOnDisk points =
                SiteOnDisk.in(place, "measured").with("site.yaml", """
                datum: NAVD88
                units: {elevation: ft}
                survey: {date: 2026-09-01, horizontal_accuracy: 0.01 ft, vertical_accuracy: 0.01 ft}
                layers: {as_built: points.csv}
                """).with("points.csv", """
                point,lon,lat,structure,kind,elevation
                101,-76.0498392408,35.3002600078,P-1,invert_up,7.90
                102,-76.0499502755,35.300283913,P-1,invert_down,7.60
                """);

        Ran ran = compare(PLAN, points.path(), "--out", place.resolve("out"));

        assertThat(ran.out())
                .contains("Pipe P-1: invert down off by 0.24 ft", "outfall OF-1: invert, place")
                .doesNotContain("AS IT WAS");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(place.resolve("out").resolve("comparison.html")).content().contains("As built against the design");
    }

    @Test
    void thePageStandsAloneAndTheDataKeepsToItsSchema() throws IOException {
        moveOutfall();
        after.replacing("pipe.geojson", "\"id\": \"P-4\"", "\"id\": \"LAT-4\"");
        Path out = place.resolve("out");

        compare(PLAN, after.path(), "--out", out);

        String page = Files.readString(out.resolve("comparison.html"));
        assertThat(page)
                .contains(
                        "moved 4.07 ft in plan",
                        "class=\"m-before",
                        "was P-4; it lies in the same place",
                        "New or worse")
                .doesNotContain("<script", "src=", "href=\"http");
        ObjectMapper json = new ObjectMapper();
        JsonNode data = json.readTree(Files.readString(out.resolve("comparison.json")));
        assertThat(schema().validate(data)).isEmpty();
        assertThat(data.get("got_worse").asBoolean()).isTrue();
        assertThat(Files.readString(out.resolve("comparison.txt"))).contains("RULE BOOKS");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files).hasSize(3);
        }
    }

    @Test
    void hostileNamesStayTextOnThePageThatLoadsNothing() throws IOException {
        after.replacing("pipe.geojson", "\"id\": \"P-4\"", "\"id\": \"</style><img src=x onerror='alert(1)'>\"")
                .replacing("cleanout.geojson", "\"id\": \"", "\"id\": \"x\\\" onmouseover=\\\"alert(1) ");
        Path out = place.resolve("out");

        Ran ran = compare(PLAN, after.path(), "--out", out);

        assertThat(ran.code()).as(ran.err()).isLessThan(2);
        assertThat(Files.readString(out.resolve("comparison.html")))
                .contains("&lt;img src=x", "Content-Security-Policy\" content=\"default-src &#39;none&#39;; style-src ")
                .doesNotContain("<img", "<script")
                .doesNotContainPattern("<[a-z][^<>]*x\" onmouseover");
    }

    @Test
    void theSecondSubmittalOfTheSampleShowsEveryKindOfChange() {
        Ran ran = compare("sample-sites/thistledown-3", "docs/later-sites/thistledown-3");

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("outfall-lot-line-setback (must): meets, now fails")
                .contains("outfall OF-1: moved 7.21 ft in plan")
                .contains("pipe P-8: was P-7; it lies in the same place")
                .contains("the septic layer: not supplied, now stated absent")
                .contains("added: cleanout CO-1")
                .contains("pipe P-4, invert up: not said, now 589.45 ft");
        assertThat(ran.code()).isEqualTo(1);
    }

    @Test
    void theWorkAsBuiltOfTheSampleLiesOffInTwoPlaces() {
        Ran ran = compare("sample-sites/quillfeather-8", "docs/later-sites/quillfeather-8");

        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("3 values as built beyond tolerance, 2 not measured.")
                .contains(
                        "Pipe P-5: invert up off by 0.15 ft, at most 0.1 ft asked, 0.05 ft over; designed 6.70 ft, built"
                                + " 6.85 ft, too high.")
                .contains("Outfall OF-1: place off by 0.78 ft")
                .contains("cleanout CO-2: rim, place");
        assertThat(ran.code()).isEqualTo(1);
    }

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(Path.of("docs/schema/comparison.schema.json")));
    }
}
