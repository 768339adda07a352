package org.fallrule.reader.frame;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.fallrule.Fuzzed;
import org.fallrule.document.Place;
import org.locationtech.jts.geom.Coordinate;

class CoordinateSystemFuzzTest {
    private static final Place WHERE = Place.of("lot.prj");

    @FuzzTest
    void anyTextIsASystemOrRefused(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Fuzzed.readOrRefuse(() -> {
            CoordinateSystem system = CoordinateSystem.of(text, WHERE);
            Coordinate lonLat = system.toLonLat(new Coordinate(2_050_005, 740_005), WHERE);
            system.fromLonLat(lonLat);
        });
    }
}
