package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Elevation;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;

/** A plan is the same, whether its layers lie in its own folder or are shared by all, in whatever format they come. */
class SharedLayersInManyFormatsTest {
    private static final Path FIXTURES = Path.of("src/test/resources/org/fallrule/reader");
    private static final String ALL_ROUND = "near: 2000 ft\nunits: {elevation: ft, diameter: in, depth: in}\nshared:\n";

    @TempDir
    Path place;

    @Test
    void asGeoJson() throws IOException {
        same("plumb-line-1", "utility", "walk", "street");
    }

    @Test
    void asShapefiles() throws IOException {
        same("harrow-14", "utility", "walk", "street", "easement");
    }

    @Test
    void asTablesOfOneGeoPackage() throws IOException {
        SiteOnDisk plan = SiteOnDisk.in(SiteOnDisk.in(place, "own").path(), "plumb-line-1");
        Files.copy(FIXTURES.resolve("geopackage/plumb-line-1.gpkg"), plan.path("plan.gpkg"));
        plan.with(
                "site.yaml",
                Files.readString(Path.of("sample-sites", "plumb-line-1", "site.yaml"))
                        .replaceAll("(?m)^  \\w+: (\\w+)\\.geojson$", "  $1: {file: plan.gpkg, table: $1}")
                        .replaceAll("file: (\\w+)\\.geojson", "file: plan.gpkg, table: $1"));

        same(plan, "utility", "walk", "street");
    }

    @Test
    void theGroundAsARaster() throws IOException {
        SiteOnDisk stack = SiteOnDisk.in(place, "stack");
        SiteOnDisk plan = SiteOnDisk.in(stack.path(), "lane-1")
                .layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                "'id': 'L-1', 'own': true",
                                "Polygon",
                                "[[[1450200, 549700], [1450400, 549700], [1450400, 549900], [1450200, 549700]]]"));
        String said = "crs: EPSG:2264\nunits: {elevation: ft}\nlayers:\n  lot: lot.geojson\n";
        Files.copy(FIXTURES.resolve("raster/plain.tif"), plan.path("ground.tif"));
        plan.with("site.yaml", said + "  ground: {file: ground.tif, unit: ft}\n");
        List<Double> own = heights(plan);

        Files.move(plan.path("ground.tif"), stack.path("ground.tif"));
        plan.with("site.yaml", said);
        stack.with("sites.yaml", "shared:\n  ground: {file: ground.tif, unit: ft}\n");

        assertThat(own).isNotEmpty().doesNotContain(Double.NaN);
        assertThat(heights(plan)).isEqualTo(own);
    }

    private static List<Double> heights(SiteOnDisk plan) {
        SiteAnalysis analysis = SiteAnalysis.of(SiteReader.read(plan.path()));
        return Stream.of(new Coordinate(0, 0), new Coordinate(7, 3), new Coordinate(-11, -20))
                .map(at -> analysis.ground()
                        .flatMap(ground -> ground.elevationAt(at))
                        .map(Elevation::metres)
                        .orElse(Double.NaN))
                .toList();
    }

    private void same(String sample, String... shared) throws IOException {
        same(SiteOnDisk.copied(sample, SiteOnDisk.in(place, "own").path()), shared);
    }

    /** Moves layers of a plan out to all, and holds what is read against what was read before. */
    private void same(SiteOnDisk plan, String... shared) throws IOException {
        List<String> own = features(SiteReader.read(plan.path()));

        Path stack = plan.path().resolveSibling("sites.yaml");
        StringBuilder all = new StringBuilder(ALL_ROUND);
        String said = Files.readString(plan.path("site.yaml"));
        for (String role : shared) {
            String layer = Stream.of(said.split("(?m)^(?=  [a-z_]+:)", -1))
                    .filter(part -> part.startsWith("  " + role + ":"))
                    .findFirst()
                    .orElseThrow();
            all.append(layer);
            said = said.replace(layer, "");
        }
        Files.writeString(stack, all);
        plan.with("site.yaml", said);
        try (Stream<Path> files = Files.list(plan.path())) {
            for (Path file : files.filter(file -> !file.endsWith("site.yaml")).toList()) {
                Files.copy(file, stack.resolveSibling(file.getFileName()));
            }
        }
        List<String> fromAll = features(SiteReader.read(plan.path()));

        assertThat(new TreeSet<>(fromAll)).isEqualTo(new TreeSet<>(own)).hasSizeGreaterThan(15);
        assertThat(fromAll).hasSameSizeAs(own);
    }

    /** Every feature with every attribute and vertex, without the place it came from. */
    private static List<String> features(Site site) {
        return Stream.of(Role.values())
                .flatMap(role -> site.features(role).stream())
                .map(SharedLayersInManyFormatsTest::written)
                .toList();
    }

    private static String written(Feature feature) {
        return feature.role().word() + " " + feature.id() + " "
                + feature.attributes().asMap() + " "
                + List.of(feature.geometry().getCoordinates());
    }
}
