package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fallrule.SiteOnDisk.feature;

import java.nio.file.Path;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A role from several files, what holds for a whole layer, and what site.yaml leaves open. */
class LayersInPartsTest {
    @TempDir
    Path place;

    private SiteOnDisk site;

    @BeforeEach
    void utilitiesInTwoFiles() {
        site = SiteOnDisk.in(place, "lane-1")
                .layer("gas.geojson", feature("'id': 'G-1'", "LineString", "[[-76.05, 35.3], [-76.0499, 35.3]]"))
                .layer(
                        "other.geojson",
                        feature(
                                "'id': 'O-1', 'kind': 'sanitary'",
                                "LineString",
                                "[[-76.05, 35.3], [-76.0499, 35.301]]"),
                        feature("'id': 'O-2'", "LineString", "[[-76.05, 35.3], [-76.0498, 35.302]]"));
    }

    private Site read(String siteYaml) {
        return SiteReader.read(site.with("site.yaml", siteYaml).path());
    }

    @Test
    void severalFilesGiveOneLayer() {
        Site read = read("layers: {utility: [{file: gas.geojson, all: {kind: gas}}, other.geojson]}");

        assertThat(read.features(Role.UTILITY)).extracting(Feature::id).containsExactly("G-1", "O-1", "O-2");
        assertThat(read.features(Role.UTILITY).get(0).get(Attribute.KIND)).contains("gas");
        assertThat(read.features(Role.UTILITY).get(2).get(Attribute.KIND)).isEmpty();
    }

    @Test
    void whatHoldsForAllYieldsToWhatAColumnSays() {
        Site read = read("layers: {utility: {file: other.geojson, all: {kind: electric, depth: 24 in}}}");

        assertThat(read.features(Role.UTILITY))
                .extracting(line -> line.get(Attribute.KIND).orElse("-"))
                .containsExactly("sanitary", "electric");
        assertThat(read.features(Role.UTILITY)
                        .get(0)
                        .get(Attribute.DEPTH)
                        .orElseThrow()
                        .metres())
                .isEqualTo(24 * 0.0254);
    }

    @Test
    void twoGroundsOfWhichOneIsARasterAreRefused() {
        assertThatThrownBy(() -> read("layers: {utility: gas.geojson, ground: [a.tif, b.tif]}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("site.yaml:1:41: ground is given by a.tif and by another file; keep one");
    }

    @Test
    void whatStaysOpenIsToldWithItsLine() {
        Site read = read("""
                datum:  # ask: which datum?
                units:
                  elevation: ft  # ask: answered, so not told
                  diameter:      # ask: ft or in?
                # ask: what is x.shp? then take this line away
                layers:
                  utility:
                    file: other.geojson
                    fields: {diameter: }
                    values:
                      kind:
                        'a: b':  # ask: which kind?
                """);

        assertThat(read.problems())
                .extracting(Fault::toString)
                .filteredOn(problem -> problem.contains("is open"))
                .containsExactly(
                        "site.yaml:1: datum: is open: which datum?",
                        "site.yaml:4: diameter: is open: ft or in?",
                        "site.yaml:5: is open: what is x.shp? then take this line away",
                        "site.yaml:12: 'a: b': is open: which kind?");
    }

    @Test
    void whereThePlanCannotBeReadWhatIsOpenIsToldToo() {
        site.layer("gas.geojson", feature("'id': 'G-1'", "LineString", "[[2130000, 760000], [2130010, 760000]]"));

        assertThatThrownBy(() -> read("crs:   # ask: which system?\nlayers: {utility: gas.geojson}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("gas.geojson: feature 1: x is 2130000")
                .hasMessageContaining("site.yaml:1: crs: is open: which system?");
    }
}
