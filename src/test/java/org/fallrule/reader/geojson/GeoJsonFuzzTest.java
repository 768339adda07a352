package org.fallrule.reader.geojson;

import com.code_intelligence.jazzer.junit.FuzzTest;
import org.fallrule.Fuzzed;

class GeoJsonFuzzTest {
    @FuzzTest
    void anyBytesAreReadOrRefused(byte[] bytes) {
        Fuzzed.readOrRefuse(() -> GeoJsonReader.read(Fuzzed.file("lot.geojson", bytes), "lot.geojson"));
    }
}
