package org.fallrule.filter;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The strong three-valued tables of S. C. Kleene, On notation for ordinal numbers, Journal of Symbolic Logic 3, 1938. */
class TruthTest {

    @ParameterizedTest
    @CsvSource({
        "TRUE, TRUE, TRUE, TRUE",
        "TRUE, FALSE, FALSE, TRUE",
        "TRUE, UNKNOWN, UNKNOWN, TRUE",
        "FALSE, TRUE, FALSE, TRUE",
        "FALSE, FALSE, FALSE, FALSE",
        "FALSE, UNKNOWN, FALSE, UNKNOWN",
        "UNKNOWN, TRUE, UNKNOWN, TRUE",
        "UNKNOWN, FALSE, FALSE, UNKNOWN",
        "UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN",
    })
    void andAndOrFollowTheTables(Truth one, Truth other, Truth and, Truth or) {
        assertThat(one.and(other)).isEqualTo(and);
        assertThat(one.or(other)).isEqualTo(or);
    }

    @ParameterizedTest
    @CsvSource({"TRUE, FALSE", "FALSE, TRUE", "UNKNOWN, UNKNOWN"})
    void notTurnsWhatIsKnown(Truth one, Truth not) {
        assertThat(one.not()).isEqualTo(not);
    }
}
