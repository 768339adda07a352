package org.fallrule.reader.raster;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.Fuzzed;
import org.fallrule.document.Place;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

class RasterFuzzTest {
    private static final String CRS = "EPSG:2264";

    @FuzzTest
    void anyGeoTiffIsReadOrRefused(byte[] bytes) {
        read(Fuzzed.file("ground.tif", bytes), "ground.tif");
    }

    @FuzzTest
    void anyAsciiGridIsReadOrRefused(byte[] bytes) {
        read(Fuzzed.file("ground.asc", bytes), "ground.asc");
    }

    private static void read(Path file, String name) {
        Coordinate middle =
                CoordinateSystem.of(CRS, Place.of(name)).toLonLat(new Coordinate(1_450_200, 549_800), Place.of(name));
        LocalFrame frame = LocalFrame.at(middle.x, middle.y);
        Envelope around = new Envelope(-60, 60, -60, 60);
        Fuzzed.readOrRefuse(
                () -> RasterReader.read(file, name, Optional.of(CRS), Optional.of(Unit.ELEVATION_FOOT), frame, around));
    }
}
