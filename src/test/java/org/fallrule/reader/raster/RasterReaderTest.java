package org.fallrule.reader.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.HeightField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

class RasterReaderTest {
    private static final LocalFrame FRAME = Fixture.frame("EPSG:2264", 1450240, 549820);
    private static final Envelope AROUND = Fixture.around(50);

    @TempDir
    Path folder;

    private static RasterReader.Reading read(Path file, Optional<String> crs, Optional<Unit> unit, LocalFrame frame) {
        return RasterReader.read(file, "ground/" + file.getFileName(), crs, unit, frame, AROUND);
    }

    private Path grid(String text) throws IOException {
        return Files.writeString(folder.resolve("dem.asc"), text);
    }

    @Test
    void asksForTheUnitOfHeightsThatNobodyNames() {
        assertThatThrownBy(() -> read(Fixture.path("plain.tif"), Optional.empty(), Optional.empty(), FRAME))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("ground/plain.tif: says nothing of the unit of its heights; say unit: ft, ft_us or m for it"
                        + " in site.yaml, as in layers: {ground: {file: ground/plain.tif, unit: ft}}");
    }

    @Test
    void takesTheUnitThatTheFileNamesAndSaysSo() {
        RasterReader.Reading own =
                read(Fixture.path("vertical_feet.tif"), Optional.empty(), Optional.of(Unit.METRE), FRAME);

        double metres =
                own.heights().heightAt(new Coordinate(0, 0)).orElseThrow().metres();
        assertThat(metres).isBetween(630 * 0.3048, 660 * 0.3048);
        assertThat(own.notes())
                .extracting(Fault::toString)
                .containsExactly(
                        "ground/vertical_feet.tif: its heights are in ft_us by its own words; m in site.yaml was"
                                + " not used; mend the one that is wrong");
    }

    @Test
    void asksForTheSystemThatNobodyNames() {
        assertThatThrownBy(() ->
                        read(Fixture.path("no_crs.tif"), Optional.empty(), Optional.of(Unit.ELEVATION_FOOT), FRAME))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("says nothing of its coordinate reference system");
    }

    @Test
    void notesThatThePlansSystemWasTaken() {
        RasterReader.Reading read =
                read(Fixture.path("no_crs.tif"), Optional.of("EPSG:2264"), Optional.of(Unit.FOOT), FRAME);

        assertThat(read.notes())
                .extracting(Fault::says)
                .singleElement()
                .asString()
                .contains("was taken (EPSG:2264)");
    }

    @Test
    void takesTheProjectionFileBesideIt() {
        RasterReader.Reading read =
                read(Fixture.path("corner.asc"), Optional.of("EPSG:4269"), Optional.of(Unit.FOOT), FRAME);

        assertThat(read.notes()).isEmpty();
        assertThat(read.crs()).isEqualTo("NAD_1983_StatePlane_North_Carolina_FIPS_3200_Feet");
    }

    @Test
    void saysHowFarAwayARasterLies() {
        LocalFrame elsewhere = Fixture.frame("EPSG:2264", 1450240 + 20000, 549820);

        assertThatThrownBy(() -> read(Fixture.path("plain.tif"), Optional.empty(), Optional.of(Unit.FOOT), elsewhere))
                .isInstanceOf(UnusableInput.class)
                .hasMessageMatching("ground/plain.tif: lies 59\\d\\d m \\(19\\d\\d\\d ft\\) away from the plan.*");
    }

    @Test
    void aProjectionOfItsOwnIsNoted() {
        RasterReader.Reading read = RasterReader.read(
                Fixture.path("own_projection.tif"),
                "own.tif",
                Optional.of("EPSG:2264"),
                Optional.of(Unit.FOOT),
                Fixture.frame("EPSG:2264", 550060, 149940),
                AROUND);

        assertThat(read.notes()).extracting(Fault::says).anyMatch(says -> says.contains("projection of its own"));
    }

    /** On the zone's central meridian, where grid north is north. */
    @Test
    void aCellThatHasNoHeightTakesPartInNoOther() throws IOException {
        Path file = grid("""
                ncols 3
                nrows 2
                xllcenter 2000000
                yllcenter 549820
                cellsize 10
                NODATA_value -1
                1 2 -1
                3 4 5
                """);
        LocalFrame frame = Fixture.frame("EPSG:2264", 2000000, 549820);
        HeightField field = read(file, Optional.of("EPSG:2264"), Optional.of(Unit.METRE), frame)
                .heights();

        assertThat(height(field, 0, 0).orElseThrow()).isCloseTo(3, within(1e-6));
        assertThat(height(field, 0.5, 0.5).orElseThrow()).isCloseTo(2.5, within(1e-3));
        assertThat(height(field, 1.5, 0.5)).isEmpty();
        assertThat(height(field, 2, 1)).isEmpty();
        assertThat(height(field, -0.1, 0)).isEmpty();
        assertThat(height(field, 0, 1.1)).isEmpty();
    }

    @Test
    void heightsThatNoGroundHasAreNoneAndNoted() throws IOException {
        Path file = grid("""
                ncols 2
                nrows 2
                xllcenter 1450230
                yllcenter 549810
                cellsize 20
                NODATA_value -1
                1 -32768
                3 3.4e38
                """);
        RasterReader.Reading read = read(file, Optional.of("EPSG:2264"), Optional.of(Unit.METRE), FRAME);

        assertThat(read.heights().heightAt(new Coordinate(0, 0))).isEmpty();
        assertThat(read.notes())
                .extracting(Fault::says)
                .anyMatch(says -> says.startsWith("has 2 cells around the plan"));
    }

    @Test
    void aRasterWithoutHeightsAroundThePlanIsRefused() throws IOException {
        Path file = grid("""
                ncols 2
                nrows 1
                xllcenter 1450230
                yllcenter 549810
                cellsize 20
                -9999 -9999
                """);
        assertThatThrownBy(() -> read(file, Optional.of("EPSG:2264"), Optional.of(Unit.METRE), FRAME))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("has no heights around the plan");
    }

    private static Optional<Double> height(HeightField field, double columns, double rows) {
        double cell = field.spacing();
        return field.heightAt(new Coordinate(columns * cell, rows * cell)).map(found -> found.metres());
    }
}
