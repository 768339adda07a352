package org.fallrule.reader.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.fallrule.measure.Elevation;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.HeightField;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;

/**
 * Outside source: GDAL 3.6.2 wrote these rasters and read them back ({@code make_fixtures.py} beside them); the {@code .txt}
 * files hold the heights that its bilinear resampling found.
 */
class RastersWrittenByGdalTest {
    /**
     * Feet. GDAL resamples in single precision, and its 1-pixel target is 2e-4 of a cell wide: heights change by less than 2
     * a cell here.
     */
    private static final double BOUND = 0.001;

    @ParameterizedTest(name = "{0} has the heights that GDAL reads")
    @CsvSource({
        "plain.tif, EPSG:2264, 1450240, 549820",
        "deflate_float_tiled.tif, EPSG:2264, 1450240, 549820",
        "deflate_double.tif, EPSG:2264, 1450240, 549820",
        "lzw_int16.tif, EPSG:2264, 1450240, 549820",
        "lzw_float_tiled.tif, EPSG:2264, 1450240, 549820",
        "zstd_float.tif, EPSG:2264, 1450240, 549820",
        "zstd_int32_tiled.tif, EPSG:2264, 1450240, 549820",
        "uint16.tif, EPSG:2264, 1450240, 549820",
        "point.tif, EPSG:2264, 1450240, 549820",
        "bigtiff.tif, EPSG:2264, 1450240, 549820",
        "bigendian.tif, EPSG:2264, 1450240, 549820",
        "nan_nodata.tif, EPSG:2264, 1450240, 549820",
        "no_crs.tif, EPSG:2264, 1450240, 549820",
        "corner.asc, EPSG:2264, 1450240, 549820",
        "centre.asc, EPSG:2264, 1450240, 549820",
        "degrees.tif, EPSG:4269, -80.8978, 35.2983",
        "turned.tif, EPSG:26917, 510060, 3904990",
    })
    void readsAsGdalReads(String name, String crs, double x, double y) throws IOException {
        LocalFrame frame = Fixture.frame(crs, x, y);
        HeightField field = Fixture.read(Fixture.path(name), crs, frame, Fixture.around(1000))
                .heights();

        CoordinateSystem system = CoordinateSystem.of(crs, Fixture.WHERE);
        for (Fixture.Reading reading : Fixture.readings(name)) {
            Coordinate local = Fixture.local(system, frame, reading.position());
            if (reading.isNone()) {
                assertThat(field.heightAt(local)).as("%s", reading).isEmpty();
            } else {
                assertThat(field.heightAt(local).orElseThrow())
                        .as("%s", reading)
                        .extracting(Elevation::metres)
                        .satisfies(metres -> assertThat(metres / 0.3048).isCloseTo(reading.height(), within(BOUND)));
            }
        }
    }

    @ParameterizedTest(name = "of {0} only what lies around the plan is read, with the same heights")
    @CsvSource({"deflate_float_tiled.tif", "zstd_float.tif", "corner.asc"})
    void readsAWindowAlike(String name) throws IOException {
        LocalFrame frame = Fixture.frame("EPSG:2264", 1450240, 549820);
        HeightField all = Fixture.read(Fixture.path(name), "EPSG:2264", frame, Fixture.around(1000))
                .heights();
        HeightField part = Fixture.read(Fixture.path(name), "EPSG:2264", frame, Fixture.around(20))
                .heights();

        assertThat(part.extent().getWidth()).isBetween(40.0, 60.0);
        assertThat(part.spacing()).isCloseTo(10 * 0.3048, within(0.001));
        for (double x = -20; x <= 20; x += 2.3) {
            Coordinate place = new Coordinate(x, 15 - x / 2);
            assertThat(part.heightAt(place).orElseThrow().metres())
                    .isCloseTo(all.heightAt(place).orElseThrow().metres(), within(1e-6));
        }
    }
}
