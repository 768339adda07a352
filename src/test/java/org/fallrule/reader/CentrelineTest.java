package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.fallrule.SiteOnDisk;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;

/** Walks drawn as lines, in US survey feet of EPSG:2264. */
class CentrelineTest {
    @TempDir
    Path place;

    private SiteOnDisk folder;

    @BeforeEach
    void aLot() {
        folder = SiteOnDisk.in(place, "lane-1")
                .layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                "'id': 'L-1', 'own': true",
                                "Polygon",
                                "[[[2050000, 740000], [2050100, 740000], [2050100, 740100], [2050000, 740100], [2050000, 740000]]]"));
    }

    private Geometry walk(String properties, String yaml) {
        folder.layer(
                        "walk.geojson",
                        SiteOnDisk.feature(
                                properties, "LineString", "[[2050000, 740050], [2050040, 740050], [2050040, 740080]]"))
                .with(
                        "site.yaml",
                        "crs: EPSG:2264\nlayers: {lot: lot.geojson, walk: {file: walk.geojson" + yaml + "}}");
        return SiteReader.read(folder.path()).features(Role.WALK).stream()
                .map(Feature::geometry)
                .findFirst()
                .orElseThrow();
    }

    /** By hand: 5 ft wide, 40 ft and 30 ft long, square ends, and one square corner of which a quarter lies outside of both. */
    @Test
    void aLineWithAWidthIsTheAreaFromEdgeToEdge() {
        Geometry walk = walk("'id': 'W-1', 'width': 5", ", units: {width: ft}");

        double square = 0.3048 * 0.3048;
        assertThat(walk.getGeometryType()).isEqualTo("Polygon");
        assertThat(walk.getNumPoints()).isEqualTo(7);
        assertThat(walk.getArea() / square).isBetween(349.8, 350.2);
    }

    @Test
    void theColumnsNameMayCarryTheUnit() {
        assertThat(walk("'id': 'W-1', 'width_in': 60", "").getArea()).isBetween(32.4, 32.6);
    }

    @Test
    void aLineWithoutAWidthIsAskedFor() {
        assertThatThrownBy(() -> walk("'id': 'W-1'", ""))
                .hasMessage(
                        "walk.geojson: feature 1: is a line without a width; say the walk's width in a column width, with"
                                + " its unit under units: {width: …}, or draw its area");
    }

    @Test
    void aWidthInAnotherUnitThanItIsReadInIsRefused() {
        assertThatThrownBy(() -> walk("'id': 'W-1', 'width': 1500", ", units: {width: ft}"))
                .hasMessageContaining("1500 ft is wider than a walk can be");
    }
}
