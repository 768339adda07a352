package org.fallrule.bookshelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.SiteReader;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which county a lot lies in. West and east of the meridian 76 degrees 6 minutes lie two invented counties, in open water; a
 * lot is some 27 m wide, and 0.000001 degrees there are 9 cm.
 */
class JurisdictionTest {
    private static final String WEST = "[[[-76.2, 35.2], [-76.1, 35.2], [-76.1, 35.4], [-76.2, 35.4], [-76.2, 35.2]]]";
    private static final String EAST = "[[[-76.1, 35.2], [-76.0, 35.2], [-76.0, 35.4], [-76.1, 35.4], [-76.1, 35.2]]]";

    @TempDir
    Path folder;

    @BeforeEach
    void books() throws IOException {
        Files.createDirectories(folder.resolve("rules/counties"));
        Files.writeString(folder.resolve("rules/baseline.yaml"), "title: baseline\n");
        for (String county : List.of("west", "east")) {
            Files.writeString(folder.resolve("rules/counties/" + county + ".yaml"), "title: " + county + "\n");
        }
        map(
                SiteOnDisk.feature("'county': 'west'", "Polygon", WEST),
                SiteOnDisk.feature("'county': 'east'", "Polygon", EAST));
    }

    private void map(String... features) {
        SiteOnDisk.in(folder, "rules").layer("counties.geojson", features);
    }

    private RuleLibrary library() {
        return new RuleLibrary(folder.resolve("rules"), "rules");
    }

    /** A site whose own lot reaches from one longitude to another. */
    private Site lot(double west, double east) {
        return site("site: x", "'own': true", west, east);
    }

    private Site site(String siteFile, String properties, double west, double east) {
        return SiteReader.read(SiteOnDisk.in(folder, "site")
                .with("site.yaml", siteFile + "\n")
                .layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                properties,
                                "Polygon",
                                String.format(
                                        "[[[%1$s, 35.3], [%2$s, 35.3], [%2$s, 35.3004], [%1$s, 35.3004], [%1$s, 35.3]]]",
                                        west, east)))
                .path());
    }

    private Jurisdiction of(Site site) {
        return Jurisdiction.of(Optional.empty(), site, library(), CountyMap.of(library()));
    }

    private static List<String> says(Jurisdiction found) {
        return found.notices().stream().map(Fault::toString).toList();
    }

    @Test
    void aLotInsideOfACountyIsFoundAndThatIsSaid() {
        Jurisdiction found = of(lot(-76.0503, -76.05));

        assertThat(found.counties()).containsExactly("east");
        assertThat(says(found))
                .containsExactly("site.yaml: county: says no county; by rules/counties.geojson the lot lies in east,"
                        + " whose rules are applied; name the county to settle it");
    }

    @ParameterizedTest
    @CsvSource({
        "-76.1000, -76.0997, its west side on the line",
        "-76.1003, -76.1000, its east side on the line",
        "-76.1001, -76.0998, across the line",
    })
    void aLotOnTheLineLiesInBothAndThatIsSaid(double west, double east, String where) {
        Jurisdiction found = of(lot(west, east));

        assertThat(found.counties()).as(where).containsExactly("west", "east");
        assertThat(found.spoken()).isEqualTo("west and east");
        assertThat(says(found))
                .containsExactly("site.yaml: county: says no county; by rules/counties.geojson the lot lies on the line"
                        + " of west and east, so that the rules of both are applied, of each the stricter; ask whose rules"
                        + " govern, and name that county");
    }

    @Test
    void aLotAHandBesideTheLineLiesInOneUnlessTheLineIsKnownNoBetter() {
        Site beside = lot(-76.099999, -76.0997);
        assertThat(of(beside).counties()).containsExactly("east");

        map(
                SiteOnDisk.feature("'county': 'west', 'accuracy': '1 ft'", "Polygon", WEST),
                SiteOnDisk.feature("'county': 'east'", "Polygon", EAST));
        assertThat(of(beside).counties()).containsExactly("west", "east");
    }

    @Test
    void aLotInNoneAsks() {
        assertThatThrownBy(() -> of(lot(-75.9, -75.8997)))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("site.yaml: county: says no county; name one of east, west, here or with --county (the lot"
                        + " lies in none of the counties in rules/counties.geojson); a county without a book begins with"
                        + " two lines: docs/rule-books.md");
    }

    @Test
    void aLotThatReachesBeyondAllCountiesSaysSo() {
        Jurisdiction found = of(lot(-76.0001, -75.9998));

        assertThat(found.counties()).containsExactly("east");
        assertThat(says(found)).hasSize(2).element(1).asString().contains("outside of the counties");
    }

    @Test
    void aPlanWithoutALotOfItsOwnAsks() {
        assertThatThrownBy(() -> of(site("site: x", "'own': false", -76.0503, -76.05)))
                .hasMessageContaining("the plan's own lot, which would tell by rules/counties.geojson, is not known");
    }

    @Test
    void withoutAMapThePlanHasToSay() throws IOException {
        Files.delete(folder.resolve("rules/counties.geojson"));

        assertThatThrownBy(() -> of(lot(-76.0503, -76.05)))
                .hasMessage("site.yaml: county: says no county; name one of east, west, here or with --county; a county"
                        + " without a book begins with two lines: docs/rule-books.md");
    }

    @Test
    void theCountyThatIsNamedWinsAndWhereTheLotLiesElsewhereThatIsSaid() {
        Site east = site("county: west", "'own': true", -76.0503, -76.05);

        assertThat(of(east).counties()).containsExactly("west");
        assertThat(says(of(east)))
                .containsExactly("site.yaml: county: names west, whose rules alone are applied, but by"
                        + " rules/counties.geojson the lot lies in east; ask whose rules govern");
        Jurisdiction named = Jurisdiction.of(Optional.of("east"), east, library(), CountyMap.of(library()));
        assertThat(named.counties()).containsExactly("east");
        assertThat(named.notices()).isEmpty();
    }

    @Test
    void ofThreeCountiesThatMeetAllApply() throws IOException {
        Files.writeString(folder.resolve("rules/counties/north.yaml"), """
                title: north
                rules:
                  r: {title: x, check: slope, at_least: 1 %, weight: must, basis: {kind: practice}}
                """);
        map(
                SiteOnDisk.feature("'county': 'west'", "Polygon", WEST),
                SiteOnDisk.feature("'county': 'east'", "Polygon", EAST),
                SiteOnDisk.feature(
                        "'county': 'north'",
                        "Polygon",
                        "[[[-76.2, 35.3003], [-76.0, 35.3003], [-76.0, 35.5], [-76.2, 35.5], [-76.2, 35.3003]]]"));

        Jurisdiction found = of(lot(-76.1001, -76.0998));

        assertThat(found.counties()).containsExactly("west", "east", "north");
        assertThat(found.book(county -> library().load(county, Optional.empty(), LocalDate.of(2026, 6, 1)))
                        .notices())
                .extracting(Fault::says)
                .contains("asked by north only: r");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "'county': 'eastt' | Polygon | [[[0,0],[1,0],[1,1],[0,0]]] | feature 1: county: there is no book of eastt; did"
                        + " you mean east? Known: east, west",
                "'name': 'east' | Polygon | [[[0,0],[1,0],[1,1],[0,0]]] | feature 1: county: is missing; give the name of a"
                        + " county's book: east, west",
                "'county': 'east' | Point | [0,0] | feature 1: is no polygon; draw the county as one",
                "'county': 'east' | Polygon | [[[0,0],[1,1],[1,0],[0,1],[0,0]]] | feature 1: crosses itself; draw the"
                        + " county's line so that it does not",
                "'county': 'east' | Polygon | [[[0,0],[900,0],[900,900],[0,0]]] | feature 1: is not in longitude and"
                        + " latitude; give it in degrees (RFC 7946)",
                "'county': 'east', 'accuracy': 3 | Polygon | [[[0,0],[1,0],[1,1],[0,0]]] | feature 1: accuracy: \"3\" has no"
                        + " unit; give a length with m, cm, mm, ft, ft_us or in, such as 18 in",
                "'county': 'east', 'accuracy': '-3 ft' | Polygon | [[[0,0],[1,0],[1,1],[0,0]]] | feature 1: accuracy: -3 ft"
                        + " is negative; give zero or more",
            })
    void aMapThatCannotBeUsedSaysWhereAndWhy(String properties, String type, String coordinates, String says) {
        map(SiteOnDisk.feature(properties, type, coordinates));

        assertThatThrownBy(() -> CountyMap.of(library()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("rules/counties.geojson: " + says);
    }

    @Test
    void aMapInAnotherSystemOrWithoutCountiesIsRefused() throws IOException {
        Files.writeString(folder.resolve("rules/counties.geojson"), """
                {"type": "FeatureCollection", "features": [],
                 "crs": {"type": "name", "properties": {"name": "EPSG:2264"}}}
                """);

        assertThatThrownBy(() -> CountyMap.of(library()))
                .hasMessageContainingAll("is in EPSG:2264; give it in longitude and latitude", "holds no county");
    }
}
