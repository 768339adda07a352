package org.fallrule.filter;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import org.fallrule.Fuzzed;
import org.fallrule.document.Place;

class EcqlFuzzTest {
    private static final Map<String, Object> VALUES = Map.of(
            "code", "GS", "kind", "gas", "depth", 2.5, "own", true, "status", "ABD aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa");

    @FuzzTest
    void anyConditionIsUnderstoodOrRefused(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Fuzzed.readOrRefuse(() -> {
            Filter filter = Ecql.parse(text, Place.of("site.yaml"));
            filter.names();
            filter.test(name -> Optional.ofNullable(VALUES.get(name)));
        });
    }
}
