package org.fallrule.reader;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.fallrule.Fuzzed;

/** A made-up site.yaml beside layers that are sound. */
class SiteFileFuzzTest {
    private static final String LOT =
            "{\"type\": \"Feature\", \"properties\": {\"id\": \"L-1\", \"own\": true}, \"geometry\":"
                    + " {\"type\": \"Polygon\", \"coordinates\": [[[0, 0], [0.001, 0], [0.001, 0.001], [0, 0.001], [0, 0]]]}}";
    private static final String PIPE =
            "{\"type\": \"Feature\", \"properties\": {\"id\": \"P-1\", \"dia\": 4, \"up_ie\": 99.5},"
                    + " \"geometry\": {\"type\": \"LineString\", \"coordinates\": [[0.0001, 0.0001, 99], [0.0004, 0.0001, 98]]}}";

    @FuzzTest
    void anySiteFileIsReadOrRefused(byte[] bytes) {
        Fuzzed.file("site/lot.geojson", LOT.getBytes(StandardCharsets.UTF_8));
        Fuzzed.file("site/pipe.geojson", PIPE.getBytes(StandardCharsets.UTF_8));
        Path folder = Fuzzed.file("site/site.yaml", bytes).resolveSibling("");
        Fuzzed.readOrRefuse(() -> SiteReader.read(folder));
    }
}
