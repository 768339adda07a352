package org.fallrule.measure;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;

class WrittenFuzzTest {
    @FuzzTest
    void anyTextIsAQuantityOrRefused(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (Dimension dimension : Dimension.values()) {
            try {
                if (!Double.isFinite(Written.parse(text, dimension).quantity().si())) {
                    throw new AssertionError(text + " became a number without end");
                }
            } catch (UnreadableQuantity refused) {
                if (refused.says().isBlank()) {
                    throw new AssertionError("refused without saying why", refused);
                }
            }
        }
    }
}
