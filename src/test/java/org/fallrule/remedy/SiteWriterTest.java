package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Elevation;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Sentence;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.HeightField;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class SiteWriterTest {
    private static final Path RASTERS = Path.of("src/test/resources/org/fallrule/reader/raster");

    @TempDir
    Path place;

    static List<String> samples() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("sample-sites"))) {
            return folders.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    private Site again(Path submitted) {
        Path to = place.resolve("again").resolve(submitted.getFileName().toString());
        SiteWriter.write(SiteReader.read(submitted), submitted, to);
        return SiteReader.read(to);
    }

    private static List<String> findings(Site site) {
        RuleBook book =
                new RuleLibrary(Path.of("rules"), "rules").load(site.county().orElse("larkmoor"), site.house());
        return Reviewer.review(SiteAnalysis.of(site, book.locality()), book, LocalDate.of(2026, 6, 1))
                .findings()
                .stream()
                .filter(finding -> finding.weight() != Weight.NOTE)
                .map(SiteWriterTest::told)
                .toList();
    }

    /** The facts without the notes, which name the one of several equal places that comes first. */
    private static String told(Finding finding) {
        Observation seen = finding.observation();
        return finding.rule() + ": " + seen.outcome() + " " + Sentence.about(seen) + " "
                + seen.measured().map(Sentence::shown).orElse("");
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aWrittenSampleSaysWhatItSaid(String sample) {
        Path submitted = Path.of("sample-sites", sample);

        assertThat(findings(again(submitted))).isEqualTo(findings(SiteReader.read(submitted)));
    }

    @Test
    void aRasterIsCopiedWithWhatSaysWhereItLies() throws IOException {
        SiteOnDisk site = SiteOnDisk.in(place, "lane-1")
                .with("site.yaml", """
                        site: "Lane: 1 (invented)"
                        crs: EPSG:2264
                        units: {elevation: ft, diameter: in}
                        waivers:
                          - {rule: pipe-cover, by: county engineer, date: 2026-05-01, reason: "rock, 1 ft down"}
                        layers: {lot: lot.geojson, pipe: pipe.geojson, ground: corner.asc}
                        """)
                .layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                "'id': 'L-1', 'own': true",
                                "Polygon",
                                "[[[1450000, 549700], [1450600, 549700], [1450600, 549900], [1450000, 549900],"
                                        + " [1450000, 549700]]]"))
                .layer(
                        "pipe.geojson",
                        SiteOnDisk.feature(
                                "'id': 'P-1', 'diameter': 4, 'invert_up': 631, 'invert_down': 630",
                                "LineString",
                                "[[1450250, 549820], [1450350, 549820]]"));
        Files.copy(RASTERS.resolve("corner.asc"), site.path("corner.asc"));
        Files.copy(RASTERS.resolve("corner.prj"), site.path("corner.prj"));

        Site again = again(site.path());

        assertThat(again.layer(Role.GROUND)).isInstanceOf(Layer.Raster.class);
        assertThat(again.name()).isEqualTo("Lane: 1 (invented)");
        assertThat(again.waivers().get(0).reason()).isEqualTo("rock, 1 ft down");
        assertThat(findings(again)).isEqualTo(findings(SiteReader.read(site.path())));
    }

    /** Raised ground over a raster of proposed ground: both are written, and lie over each other as they did. */
    @Test
    void groundThatIsRaisedOverARasterIsWrittenBesideIt() throws IOException {
        SiteOnDisk folder = SiteOnDisk.copied("plumb-line-1", place);
        Files.copy(RASTERS.resolve("plain.tif"), folder.path("plain.tif"));
        Site submitted = SiteReader.read(folder.path());
        Layer.Raster raster = new Layer.Raster(new LevelField(), "plain.tif");
        Map<Role, Layer> layers = new EnumMap<>(submitted.layers());
        layers.put(Role.PROPOSED_GROUND, raster);
        Polygon triangle = (Polygon) geometry("POLYGON Z ((0 0 3, 9 0 4, 0 9 5, 0 0 3))");

        Site graded = RaisedGround.graded(submitted.with(layers), List.of(triangle));
        Path to = place.resolve("to");
        SiteWriter.write(graded, folder.path(), to);

        assertThat(graded.layer(Role.PROPOSED_GROUND)).isInstanceOf(Layer.Raster.class);
        assertThat(graded.features(Role.PROPOSED_GROUND)).hasSize(1);
        assertThat(Files.readString(to.resolve("site.yaml")))
                .contains("plain.tif")
                .contains("proposed_ground.geojson");
        assertThat(Files.readString(to.resolve("proposed_ground.geojson"))).contains("Polygon");
    }

    private static Geometry geometry(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The same height everywhere. */
    private static final class LevelField implements HeightField {
        @Override
        public Optional<Elevation> heightAt(Coordinate local) {
            return Optional.of(new Elevation(2));
        }

        @Override
        public Coordinate inCells(Coordinate local) {
            return local;
        }

        @Override
        public double spacing() {
            return 1;
        }

        @Override
        public Envelope extent() {
            return new Envelope(-50, 50, -50, 50);
        }
    }

    @Test
    void aLayerWithNothingInItStaysOne() {
        Path submitted = Path.of("sample-sites", "plumb-line-1");
        SiteOnDisk site = SiteOnDisk.copied("plumb-line-1", place).layer("cleanout.geojson");

        assertThat(again(site.path()).layer(Role.CLEANOUT)).isInstanceOf(Layer.Supplied.class);
        assertThat(SiteReader.read(submitted).features(Role.CLEANOUT)).isNotEmpty();
    }
}
