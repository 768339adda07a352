package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CodeTableTest {

    @ParameterizedTest
    @ValueSource(
            ints = {4326, 6318, 3857, 2264, 2223, 2256, 3404, 6543, 26931, 26940, 26961, 32119, 26917, 32660, 6348, 7528
            })
    void aRowIsWhatTheDatabaseSays(int code) {
        assertThat(CodeTable.find(code)).isPresent().isEqualTo(CodeTableMaker.row(code));
    }

    @Test
    void theTableHasEveryCodeThatLotsInTheUnitedStatesAreIn() throws IOException {
        Set<Integer> codes;
        try (BufferedReader lines = CodeTable.open()) {
            codes = lines.lines()
                    .map(line -> Integer.valueOf(line.split("\t", 2)[0]))
                    .collect(Collectors.toSet());
        }

        assertThat(codes)
                .contains(4326, 4269, 6318, 3857)
                .contains(range(26901, 26923))
                .contains(range(32601, 32660));
        assertThat(codes).contains(range(6328, 6348));
        // State plane: NAD83 metres, US survey feet; NAD83(HARN) metres; NAD83(2011).
        assertThat(codes)
                .contains(range(26929, 26946))
                .contains(range(26948, 26998))
                .contains(32100, 32104)
                .contains(range(32107, 32130));
        assertThat(codes).contains(range(32133, 32158)).contains(32161).contains(range(2222, 2289));
        assertThat(codes)
                .contains(range(2759, 2866))
                .contains(range(2867, 2888))
                .contains(range(6393, 6516));
    }

    @Test
    void aCodeThatIsOnlyTheStartOfAnotherIsNotFound() {
        assertThat(CodeTable.find(226)).isEmpty();
        assertThat(CodeTable.find(0)).isEmpty();
    }

    private static Integer[] range(int first, int last) {
        return IntStream.rangeClosed(first, last).boxed().toArray(Integer[]::new);
    }
}
