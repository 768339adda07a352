package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.UnusableInput;
import org.fallrule.locality.Locality;
import org.fallrule.locality.OverlandTime;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Storm;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A site may state its own rain, which then comes before the county's. */
class StormOfASiteTest {
    private static final String LOT = SiteOnDisk.feature(
            "'id': 'L-1'", "Polygon", "[[[-76.05, 35.3], [-76.049, 35.3], [-76.049, 35.301], [-76.05, 35.3]]]");

    @TempDir
    Path place;

    private SiteOnDisk folder;

    @BeforeEach
    void aFolderWithALot() {
        folder = SiteOnDisk.in(place, "lane-1").layer("lot.geojson", LOT);
    }

    private Site read(String siteYaml) {
        return SiteReader.read(folder.with("site.yaml", siteYaml).path());
    }

    @Test
    void aSiteWithoutAStormLeavesTheCountys() {
        assertThat(read("layers: {lot: lot.geojson}").storm()).isEqualTo(Storm.UNSAID);
    }

    @Test
    void aSitesReturnPeriodIsLaidOverTheCountysStorm() {
        Site site = read("""
                layers: {lot: lot.geojson}
                storm: {return_period: 100 yr, basis: asked for by the reviewer}
                """);
        Locality county = new RuleLibrary(Path.of("rules"), "rules")
                .load("larkmoor", Optional.empty())
                .locality();
        Storm storm = SiteAnalysis.of(site, county).locality().storm();

        assertThat(storm.returnPeriod().orElseThrow().value()).isEqualTo(new ReturnPeriod(100));
        assertThat(storm.returnPeriod().orElseThrow().setBy().fileAndLine()).isEqualTo("site.yaml:2");
        assertThat(storm.returnPeriod().orElseThrow().basis()).contains("asked for by the reviewer");
        assertThat(storm.rainfall()).isEqualTo(county.storm().rainfall());
    }

    @Test
    void aSitesRainTakesThePlaceOfTheCountys() {
        Site site = read("""
                layers: {lot: lot.geojson}
                storm: {return_period: 10 yr, intensity: [{minutes: 5, by: 180 mm/h}]}
                """);

        assertThat(site.storm().rainfall().keySet()).containsExactly(new ReturnPeriod(10));
    }

    @Test
    void whatIsWrongIsRefusedWithItsPlace() {
        assertThatThrownBy(() -> read("""
                        layers: {lot: lot.geojson}
                        storm: {return_period: ten, basis: {kind: practice}}
                        """))
                .isInstanceOfSatisfying(
                        UnusableInput.class,
                        e -> assertThat(e.faults())
                                .extracting(Object::toString)
                                .containsExactly(
                                        "site.yaml:2:36: basis: found keys with values, wanted one line that says who"
                                                + " gives these figures",
                                        "site.yaml:2:24: \"ten\" is not a return period; give whole years with the unit,"
                                                + " such as 10 yr"));
    }

    @Test
    void aSiteMaySayHowTheTimeOverTheGroundIsReckoned() {
        Site site = read("""
                layers: {lot: lot.geojson}
                storm: {overland: {by: sheet_flow, roughness: 0.24, two_year_rain: 3.1 in}}
                """);

        assertThat(site.storm().overland().map(OverlandTime::by)).contains(OverlandTime.By.SHEET_FLOW);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{by: kirpitch} | site.yaml:2:24 | did you mean kirpich?",
                "{roughness: 0.2} | site.yaml:2:19 | the key by is missing",
                "{by: kinematic_wave} | site.yaml:2:19 | kinematic_wave needs roughness",
                "{by: sheet_flow, roughness: 0.2} | site.yaml:2:19 | sheet_flow needs two_year_rain",
                "{by: sheet_flow, roughness: 0, two_year_rain: 3 in} | site.yaml:2:47 | give more than 0 and at most 1",
                "{by: sheet_flow, roughness: 0.2, two_year_rain: 3} | site.yaml:2:67 | has no unit",
            })
    void aWrongMethodOrAMissingFigureOfItIsAFault(String overland, String where, String says) {
        assertThatThrownBy(() -> read("layers: {lot: lot.geojson}\nstorm: {overland: " + overland + "}\n"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining(where)
                .hasMessageContaining(says);
    }
}
