package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.SiteOnDisk.feature;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.UnusableInput;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a firm says once of the columns of all its sites. */
class LayerProfileTest {
    private static final String COLLECTOR = """
            title: our collector
            units: {elevation: ft}
            layers:
              pipe:
                fields: {diameter: NOM}
                units: {diameter: in}
                values: {material: {SDR: pvc_sdr35}}
              inlet:
                - {file: 'PTS*.geojson', where: "CODE = 'CB'", fields: {kind: CODE}, values: {kind: {CB: basin}}}
            """;

    @TempDir
    Path place;

    private SiteOnDisk site;

    @BeforeEach
    void aSiteOfAFirm() {
        site = SiteOnDisk.in(SiteOnDisk.in(place, "jobs").path(), "lane-1")
                .layer(
                        "drains.geojson",
                        feature(
                                "'id': 'P-1', 'NOM': 4, 'OTHER': 6, 'material': 'SDR', 'invert_up': 7",
                                "LineString",
                                "[[-76.05, 35.3], [-76.0499, 35.3]]"))
                .layer(
                        "pts_may.geojson",
                        feature("'id': 'CB-1', 'CODE': 'CB'", "Point", "[-76.05, 35.3]"),
                        feature("'id': 'X-1', 'CODE': 'XX'", "Point", "[-76.05, 35.3]"));
    }

    private Site read(String profile, String siteYaml) {
        profile("../our-collector.yaml", profile);
        return SiteReader.read(site.with("site.yaml", siteYaml).path());
    }

    private void profile(String name, String text) {
        try {
            Path file = site.path().resolve(name).normalize();
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Feature only(Site site, Role role) {
        assertThat(site.features(role)).hasSize(1);
        return site.features(role).get(0);
    }

    private static double inches(Site site) {
        return only(site, Role.PIPE).get(Attribute.DIAMETER).orElseThrow().metres() / 0.0254;
    }

    @Test
    void aLayerTakesWhatItDoesNotSayItself() {
        Site read = read(
                COLLECTOR,
                "layers_from: ../our-collector.yaml\nlayers: {pipe: drains.geojson, inlet: pts_may.geojson}");

        assertThat(inches(read)).isCloseTo(4, within(1e-9));
        assertThat(only(read, Role.PIPE).get(Attribute.MATERIAL)).contains("pvc_sdr35");
        assertThat(only(read, Role.PIPE).get(Attribute.INVERT_UP).orElseThrow().metres())
                .isCloseTo(7 * 0.3048, within(1e-9));
        assertThat(only(read, Role.INLET).id()).isEqualTo("CB-1");
        assertThat(only(read, Role.INLET).get(Attribute.KIND)).contains("basin");
    }

    @Test
    void theSitesOwnWordsCountFirstKeyByKey() {
        Site read = read(COLLECTOR, """
                layers_from: ../our-collector.yaml
                units: {elevation: m}
                layers: {pipe: {file: drains.geojson, fields: {diameter: OTHER}}}
                """);

        assertThat(inches(read)).isCloseTo(6, within(1e-9));
        assertThat(only(read, Role.PIPE).get(Attribute.MATERIAL)).contains("pvc_sdr35");
        assertThat(only(read, Role.PIPE).get(Attribute.INVERT_UP).orElseThrow().metres())
                .isEqualTo(7);
    }

    @Test
    void aKeyThatTheSiteLeavesEmptyIsTakenFromTheProfile() {
        Site read = read(
                COLLECTOR,
                "layers_from: ../our-collector.yaml\nlayers: {pipe: {file: drains.geojson, fields: {diameter: }}}");

        assertThat(inches(read)).isCloseTo(4, within(1e-9));
    }

    @Test
    void whatIsSaidOfFilesByNameCountsForThoseOnly() {
        site.layer("more.geojson", feature("'id': 'A'", "Point", "[-76.05, 35.3]"));

        Site read = read(
                COLLECTOR, "layers_from: ../our-collector.yaml\nlayers: {pipe: drains.geojson, inlet: more.geojson}");

        assertThat(only(read, Role.INLET).id()).isEqualTo("A");
    }

    private void refused(String profile, String fault) {
        assertThatThrownBy(() -> read(profile, "layers_from: ../our-collector.yaml\nlayers: {pipe: drains.geojson}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith(fault);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "layers: {pype: {}} | ../our-collector.yaml:1:10: unknown role pype; did you mean pipe?",
                "layers: {pipe: {fields: {rim: X}}} | ../our-collector.yaml:1:31: a pipe has no attribute rim",
                "layers: {pipe: {units: {diameter: stone}}} | ../our-collector.yaml:1:35: unknown unit stone",
                "layers: {pipe: {feilds: {}}} | ../our-collector.yaml:1:17: unknown key feilds in the layer pipe",
                "layers: {pipe: {where: 'own =='}} | ../our-collector.yaml:1:24: the condition",
                "layers: {pipe: drains.geojson} | ../our-collector.yaml:1:16: pipe: found \"drains.geojson\"",
                "site: x | ../our-collector.yaml:1:1: unknown key site in a profile of layers",
                "layers_from: ../our-collector.yaml | ../our-collector.yaml:1:1: unknown key layers_from in a profile",
                "layers: {pipe: {fields: {diameter: NONE}}} | ../our-collector.yaml:1:36: drains.geojson has no column NONE",
                "[a] | ../our-collector.yaml:1:1: found a list",
            })
    void aFaultNamesTheFileAndLineOfTheProfile(String profile, String fault) {
        refused(profile, fault);
    }

    @ParameterizedTest
    @ValueSource(strings = {"own.yaml", "../a.yaml", "../../b.yaml", "../../office/c.YAML", "./d.yaml"})
    void aProfileStandsInTheFolderOrNotFarAboveIt(String name) {
        profile(name, "layers: {pipe: {fields: {diameter: NOM}, units: {diameter: in}}}");
        site.with("site.yaml", "layers_from: " + name + "\nlayers: {pipe: drains.geojson}");

        assertThat(inches(SiteReader.read(site.path()))).isCloseTo(4, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/etc/passwd",
                "/etc/passwd.yaml",
                "../../../../far.yaml",
                "a/../../../../../far.yaml",
                "../secrets.txt",
                "..",
                ".",
                "nowhere.yaml",
                "C:/x.yaml",
                "\"nul\\0.yaml\"",
            })
    void nothingElseIsOpened(String name) {
        site.with("site.yaml", "layers_from: " + name + "\nlayers: {pipe: drains.geojson}");

        assertThatThrownBy(() -> SiteReader.read(site.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("site.yaml:1:")
                .hasMessageContaining("wanted a .yaml file in the site folder or at most 3 folders up");
    }

    @Test
    void aLinkThatLeadsElsewhereIsNotFollowed(@TempDir Path elsewhere) throws IOException {
        Path secret = Files.writeString(elsewhere.resolve("secret.yaml"), "layers: {}");
        Files.createSymbolicLink(site.path("link.yaml"), secret);
        site.with("site.yaml", "layers_from: link.yaml\nlayers: {pipe: drains.geojson}");

        assertThatThrownBy(() -> SiteReader.read(site.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("link.yaml is a link that leads elsewhere");
    }
}
