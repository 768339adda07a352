package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Length;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.site.Survey;
import org.fallrule.site.Waiver;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteFileTest {
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

    private void refused(String siteYaml, String... faults) {
        assertThatThrownBy(() -> read(siteYaml))
                .isInstanceOfSatisfying(
                        UnusableInput.class,
                        e -> assertThat(e.faults())
                                .extracting(fault -> fault.toString())
                                .containsExactly(faults));
    }

    @Test
    void everyKeyOfSiteYamlIsRead() {
        Site site = read("""
                site: Lane 1 (invented)
                county: larkmoor
                house: stonebrook
                crs: EPSG:2264
                datum: NAVD88
                units: {elevation: ft}
                survey: {date: 2026-05-04, source: total_station, horizontal_accuracy: 0.1 ft, vertical_accuracy: 15 mm}
                absent: [septic, well]
                layers:
                  lot: lot.geojson
                waivers:
                  - {rule: pipe-cover, feature: P-1, by: engineer, date: 2026-06-01, reason: rock, until: 2027-06-01}
                  - {rule: hand-dig, by: engineer, date: 2026-06-02, reason: none there}
                """);

        assertThat(site.id()).isEqualTo("lane-1");
        assertThat(site.name()).isEqualTo("Lane 1 (invented)");
        assertThat(site.county()).contains("larkmoor");
        assertThat(site.house()).contains("stonebrook");
        assertThat(site.datum()).contains("NAVD88");
        assertThat(site.survey().date()).contains(LocalDate.of(2026, 5, 4));
        assertThat(site.survey().source()).contains("total_station");
        assertThat(site.survey().horizontalAccuracy().map(Length::metres).orElseThrow())
                .isCloseTo(0.03048, within(1e-12));
        assertThat(site.survey().verticalAccuracy().map(Length::metres).orElseThrow())
                .isCloseTo(0.015, within(1e-12));
        assertThat(site.layer(Role.SEPTIC))
                .isInstanceOfSatisfying(
                        Layer.StatedAbsent.class,
                        absent -> assertThat(absent.by().fileAndLine()).isEqualTo("site.yaml:8"));
        assertThat(site.layer(Role.WELL)).isInstanceOf(Layer.StatedAbsent.class);
        assertThat(site.layer(Role.TREE)).isInstanceOf(Layer.NotSupplied.class);
        assertThat(site.layer(Role.LOT))
                .isInstanceOfSatisfying(
                        Layer.Supplied.class, lot -> assertThat(lot.files()).containsExactly("lot.geojson"));
        assertThat(site.waivers())
                .extracting(Waiver::rule, Waiver::feature, Waiver::reason, Waiver::until)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "pipe-cover", Optional.of("P-1"), "rock", Optional.of(LocalDate.of(2027, 6, 1))),
                        org.assertj.core.groups.Tuple.tuple(
                                "hand-dig", Optional.empty(), "none there", Optional.empty()));
    }

    @Test
    void withoutSiteYamlTheFilesThatAreNamedForRolesAreRead() {
        folder.layer("WALK.GeoJSON", LOT).with("notes.txt", "nothing");

        Site site = SiteReader.read(folder.path());

        assertThat(site.name()).isEqualTo("lane-1");
        assertThat(site.county()).isEmpty();
        assertThat(site.survey()).isEqualTo(Survey.UNKNOWN);
        assertThat(site.layers().keySet()).containsExactlyInAnyOrder(Role.LOT, Role.WALK);
    }

    @Test
    void aKeyWithNothingBehindItSaysNothing() {
        Site site = read("site:\ncounty: ''\nhouse: ~\ncrs:\ndatum:\nlayers: {lot: lot.geojson}\n");

        assertThat(site.name()).isEqualTo("lane-1");
        assertThat(site.county()).isEmpty();
        assertThat(site.house()).isEmpty();
        assertThat(site.datum()).isEmpty();
    }

    @Test
    void aSiteYamlWithoutLayersLeavesThemToTheFilesNames() {
        assertThat(read("county: larkmoor").layer(Role.LOT)).isInstanceOf(Layer.Supplied.class);
    }

    @Test
    void anEmptySiteYamlSaysNothing() {
        assertThat(read("").layer(Role.LOT)).isInstanceOf(Layer.Supplied.class);
    }

    @Test
    void twoFilesNamedForOneRoleAreAskedAbout() {
        folder.layer("lot.json", LOT);

        assertThatThrownBy(() -> SiteReader.read(folder.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessage(
                        "lot.geojson: and lot.json are all named for the role lot; say in site.yaml which one it is,"
                                + " such as layers: {lot: lot.geojson}");
    }

    @Test
    void aFileNamedForARoleThatSiteYamlLeavesOutIsMentioned() {
        folder.layer("utility.geojson");

        assertThat(read("layers: {lot: ./lot.geojson}").problems())
                .extracting(fault -> fault.toString())
                .contains("utility.geojson: is not named under layers in site.yaml and is not read; name it there")
                .noneMatch(problem -> problem.startsWith("lot.geojson: is not named"));
    }

    @ParameterizedTest
    @CsvSource({"site.yml", "Site.yaml", "SITE.YML"})
    void aSiteYamlUnderAnotherNameIsNotPassedOver(String name) {
        folder.with(name, "county: larkmoor");

        assertThatThrownBy(() -> SiteReader.read(folder.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessage(name + ": is not read; rename it to site.yaml");
    }

    @ParameterizedTest
    @CsvSource({"site.yml", "Site.yaml"})
    void aSecondSiteYamlUnderAnotherNameIsTold(String name) {
        folder.with(name, "county: larkmoor");

        assertThat(read("layers: {lot: lot.geojson}").problems())
                .extracting(Fault::toString)
                .contains(name + ": is not read, since site.yaml is; take it away, or put what it says in there");
    }

    @Test
    void anUnknownKeyIsAFaultWithTheNearestKnownKey() {
        assertThatThrownBy(() -> read("countty: larkmoor\nlayers: {lot: lot.geojson}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("site.yaml:1:1: unknown key countty in site.yaml")
                .hasMessageContaining("county?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "layers: {lots: lot.geojson} | site.yaml:1:10: unknown role lots | lot?",
                "layers: {Lot: lot.geojson} | site.yaml:1:10: unknown role Lot | lot?",
                "layers: {sidewalk: lot.geojson} | site.yaml:1:10: unknown role sidewalk | did you mean walk?",
                "absent: [driveway] | site.yaml:1:10: unknown role driveway | did you mean drive?",
                "absent: [sceptic] | site.yaml:1:10: unknown role sceptic | septic?",
                "layers: {lot: {fil: lot.geojson}} | unknown key fil in the layer lot | file?",
                "layers: {lot: {file: lot.geojson, fields: {owm: ID}}} | a lot has no attribute owm | own?",
                "layers: {lot: {file: lot.geojson, fields: {depth: ID}}} | a lot has no attribute depth | Known: id, own",
                "layers: {lot: {file: lot.geojson, values: {owm: {a: b}}}} | a lot has no attribute owm | own?",
                "units: {elevtion: ft} | units: elevtion is not a quantity | elevation?",
                "units: {kind: ft} | units: kind is not a quantity | Known: apron_length, box_length, box_width, canopy_radius",
                "units: {elevation: feets} | site.yaml:1:20: unknown unit feets of elevation | m, ft or ft_us",
                "units: {elevation: in} | unknown unit in of elevation | m, ft or ft_us",
                "survey: {accuracy: 1 ft} | unknown key accuracy in survey | horizontal_accuracy",
                "survey: {date: 4 May 2026} | site.yaml:1:16: \"4 May 2026\" is not a date | 2026-06-01",
                "survey: {horizontal_accuracy: 0.1} | site.yaml:1:31 | ft",
                "survey: {vertical_accuracy: -1 ft} | \"-1 ft\" is negative | zero or more",
                "waivers: [{rule: a, by: b, date: 2026-06-01}] | the key reason is missing | why it was granted",
                "waivers: [a] | waivers: found \"a\" | wanted keys with values",
                "waivers: [{rule: a, by: b, date: 2026-06-01, reason: c, untill: 2027-06-01}] | unknown key untill | until?",
                "county: [a, b] | county: found a list | wanted a single value",
                "layers: lot.geojson | layers: found \"lot.geojson\" | wanted keys with values",
                "layers: {lot: [[a]]} | lot: found a list | wanted a file's name",
                "layers: {lot: []} | lot: found a list | wanted a file's name",
                "layers: {lot: [a, lot.geojson]} | there is no file a in the site folder | site folder",
                "layers: {lot: {file: lot.geojson, all: {owm: yes}}} | a lot has no attribute owm | own?",
                "layers_from: [a] | layers_from: found a list | wanted a single value",
                "layers: {lot: {file: lot.geojson, where: \"own ==\"}} | the condition own == says == | write it like",
                "layers: {lot: {crs: EPSG:2264}} | the key file is missing | the layer's file",
                "crs: EPSG:99999 | site.yaml:1:6: crs: | EPSG:99999",
                "{absent: [lot], layers: {lot: lot.geojson}} | lot is stated absent and given as a layer | keep one of the two",
            })
    void whatSiteYamlSaysWronglyIsAFaultWithItsPlaceAndAHint(String yaml, String fault, String hint) {
        assertThatThrownBy(() -> read(yaml))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith(fault.startsWith("site.yaml") ? fault : "site.yaml:1:")
                .hasMessageContaining(fault)
                .hasMessageContaining(hint);
    }

    @Test
    void everyFaultIsToldAtOnce() {
        refused(
                """
                survey: {date: soon}
                absent: [septic, lot]
                layers:
                  lot: lot.geojson
                  walk:
                """,
                "site.yaml:1:16: \"soon\" is not a date; write it like 2026-06-01",
                "site.yaml:5:8: walk: found nothing, wanted a file's name",
                "site.yaml:4:8: lot is stated absent and given as a layer; keep one of the two");
    }

    @Test
    void aKeyThatStandsTwiceIsRefused() {
        refused(
                "county: larkmoor\ncounty: saltmeadow\n",
                "site.yaml:2:1: the key county stands already in line 1; keep one of them");
    }

    @Test
    void brokenYamlIsRefusedWithLineAndColumn() {
        assertThatThrownBy(() -> read("layers:\n\tlot: lot.geojson\n"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("site.yaml:2:1: not readable as YAML");
    }
}
