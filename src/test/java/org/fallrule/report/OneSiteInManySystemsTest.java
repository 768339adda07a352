package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Dimension;
import org.fallrule.reader.SiteReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One site gives the same findings in whatever format, coordinate reference system and units its layers come. GDAL's ogr2ogr, with
 * PROJ, writes the layers anew. Everything in the site stands exactly on its limit, so the least shift would turn an outcome.
 */
class OneSiteInManySystemsTest {
    private static final Path SAMPLE = Path.of("sample-sites", "plumb-line-1");

    /** 0.001 ft in metres. */
    private static final double THOUSANDTH_OF_A_FOOT = 0.001 * 0.3048;

    /** What a number of the sample is in metres or millimetres, by its property. */
    private static final Map<String, BigDecimal> METRIC = Map.of(
            "invert", new BigDecimal("0.3048"),
            "invert_up", new BigDecimal("0.3048"),
            "invert_down", new BigDecimal("0.3048"),
            "rim", new BigDecimal("0.3048"),
            "footing_bottom", new BigDecimal("0.3048"),
            "diameter", new BigDecimal("25.4"),
            "outside_diameter", new BigDecimal("25.4"),
            "depth", new BigDecimal("25.4"));

    private static final Pattern NUMBER = Pattern.compile("\"(\\w+)\": (-?[0-9.]+)(?=[,}])");
    private static final Pattern POSITION = Pattern.compile("\\[(-?[0-9.]+), (-?[0-9.]+), (-?[0-9.]+)]");

    @TempDir
    Path place;

    private SiteOnDisk folder(String name) throws IOException {
        return SiteOnDisk.in(place, name).with("site.yaml", Files.readString(SAMPLE.resolve("site.yaml")));
    }

    private static List<Path> layers() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLE)) {
            return files.filter(file -> file.toString().endsWith(".geojson"))
                    .sorted()
                    .toList();
        }
    }

    private static void ogr2ogr(Path out, Path in, String... options) {
        try {
            List<String> command = new ArrayList<>(List.of("ogr2ogr", out.toString(), in.toString()));
            command.addAll(List.of(options));
            Process gdal = new ProcessBuilder(command).redirectErrorStream(true).start();
            String said = new String(gdal.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(gdal.waitFor()).as(said).isZero();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String stem(Path file) {
        return file.getFileName().toString().replace(".geojson", "");
    }

    /** A layer with its numbers and heights in metres and millimetres. */
    private static String metric(String geoJson) {
        String numbers = NUMBER.matcher(geoJson).replaceAll(found -> {
            BigDecimal factor = METRIC.get(found.group(1));
            return factor == null ? found.group() : "\"" + found.group(1) + "\": " + times(found.group(2), factor);
        });
        return POSITION.matcher(numbers)
                .replaceAll(found -> Matcher.quoteReplacement("[" + found.group(1) + ", " + found.group(2) + ", "
                        + times(found.group(3), new BigDecimal("0.3048")) + "]"));
    }

    private static String times(String number, BigDecimal factor) {
        return new BigDecimal(number).multiply(factor, MathContext.DECIMAL64).toPlainString();
    }

    /** Findings of the site, each as what is no number and its measured value in SI. */
    private static List<Finding> findings(Path folder) {
        return Reports.of(SiteReader.read(folder)).review().findings();
    }

    private static void same(List<Finding> found) {
        List<Finding> expected = findings(SAMPLE);
        assertThat(expected).hasSizeGreaterThan(40);
        assertThat(found).extracting(OneSiteInManySystemsTest::words).isEqualTo(words(expected));
        for (int i = 0; i < expected.size(); i++) {
            if (expected.get(i).observation().measured().isPresent()) {
                Measured was = expected.get(i).observation().measured().get();
                Measured is = found.get(i).observation().measured().orElseThrow();
                boolean length = was.value().dimension() == Dimension.LENGTH;
                assertThat(is.value().si())
                        .as(words(expected.get(i)))
                        .isCloseTo(
                                was.value().si(),
                                within(
                                        length
                                                ? THOUSANDTH_OF_A_FOOT
                                                : 1e-4
                                                        * Math.max(
                                                                1e-3,
                                                                Math.abs(was.value()
                                                                        .si()))));
            }
        }
    }

    private static List<String> words(List<Finding> findings) {
        return findings.stream().map(OneSiteInManySystemsTest::words).toList();
    }

    private static String words(Finding finding) {
        return finding.rule() + " " + finding.outcome() + " "
                + finding.observation().subject().map(of -> of.spoken()).orElse("") + " "
                + finding.observation().other().map(of -> of.spoken()).orElse("");
    }

    @Test
    void asGeoJsonInStatePlaneSurveyFeet() throws IOException {
        SiteOnDisk site = folder("feet");
        for (Path layer : layers()) {
            ogr2ogr(
                    site.path(layer.getFileName().toString()),
                    layer,
                    "-f",
                    "GeoJSON",
                    "-s_srs",
                    "EPSG:4269",
                    "-t_srs",
                    "EPSG:2264",
                    "-lco",
                    "COORDINATE_PRECISION=9");
        }

        same(findings(site.path()));
    }

    @Test
    void asShapefilesInStatePlaneMetres() throws IOException {
        SiteOnDisk site = folder("metres");
        for (Path layer : layers()) {
            ogr2ogr(site.path(stem(layer) + ".shp"), layer, "-s_srs", "EPSG:4269", "-t_srs", "EPSG:32119");
        }
        String fields = ", fields: {invert_down: invert_dow, outside_diameter: outside_di}";
        site.with(
                "site.yaml",
                Files.readString(site.path("site.yaml"))
                        .replace(".geojson", ".shp")
                        .replace("pipe.shp, ", "pipe.shp" + fields + ", ")
                        .replace(
                                "utility.shp, ",
                                "utility.shp, fields: {horizontal_accuracy: horizontal, vertical_accuracy:"
                                        + " vertical_a}, ")
                        .replace(
                                "building: building.shp",
                                "building: {file: building.shp, fields: {footing_bottom: footing_bo}}")
                        .replace(
                                "outfall: outfall.shp",
                                "outfall: {file: outfall.shp, fields: {ground_cover: ground_cov,"
                                        + " apron_length: apron_leng}}")
                        .replace(
                                "inlet: inlet.shp",
                                "inlet: {file: inlet.shp, fields: {weep_hole_area: weep_hole_,"
                                        + " grate_length: grate_leng, grate_width: grate_widt, grate_open_area: grate_open}}")
                        .replace(
                                "drainage_area: drainage_area.shp",
                                "drainage_area: {file: drainage_area.shp, fields: {drains_to: drains_to}}"));

        same(findings(site.path()));
    }

    @Test
    void asTablesOfAGeoPackageInUtmWithMetresAndMillimetres() throws IOException {
        SiteOnDisk site = folder("metric");
        Path gpkg = site.path("plan.gpkg");
        for (Path layer : layers()) {
            Path inMetres = Files.writeString(place.resolve("metric.geojson"), metric(Files.readString(layer)));
            ogr2ogr(
                    gpkg,
                    inMetres,
                    "-f",
                    "GPKG",
                    "-update",
                    "-append",
                    "-nln",
                    stem(layer),
                    "-s_srs",
                    "EPSG:4269",
                    "-t_srs",
                    "EPSG:26918");
        }
        site.with(
                "site.yaml",
                Files.readString(site.path("site.yaml"))
                        .replace("elevation: ft", "elevation: m")
                        .replace("diameter: in", "diameter: mm")
                        .replace("depth: in", "depth: mm")
                        .replaceAll("(?m)^  \\w+: (\\w+)\\.geojson$", "  $1: {file: plan.gpkg, table: $1}")
                        .replaceAll("file: (\\w+)\\.geojson", "file: plan.gpkg, table: $1"));

        same(findings(site.path()));
    }
}
