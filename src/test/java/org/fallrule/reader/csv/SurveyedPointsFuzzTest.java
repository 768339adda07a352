package org.fallrule.reader.csv;

import com.code_intelligence.jazzer.junit.FuzzTest;
import org.fallrule.Fuzzed;

class SurveyedPointsFuzzTest {
    @FuzzTest
    void anyBytesAreReadOrRefused(byte[] bytes) {
        Fuzzed.readOrRefuse(() -> SurveyedPoints.read(Fuzzed.file("spot.csv", bytes), "spot.csv"));
    }
}
