package org.fallrule.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    @ParameterizedTest
    @CsvSource({
        "at_leest, at_least",
        "AT_LEAST, at_least",
        "atleast, at_least",
        "at_mots, at_most",
        "Pipe, Pipe",
        "PIPE, Pipe",
        "pip, Pipe",
        "zzz, ''",
        "'', ''",
        "at, ''",
    })
    void theNearestWordIsAtMostAThirdOfItsLettersAway(String found, String nearest) {
        assertThat(Nearest.to(found, List.of("at_least", "at_most", "Pipe")).orElse(""))
                .isEqualTo(nearest);
    }

    @Test
    void ofTwoEquallyNearTheFirstInTheAlphabetIsMeant() {
        assertThat(Nearest.to("cat", List.of("hat", "bat"))).contains("bat");
    }

    @Test
    void aLongerWordWithinItsThirdIsFoundThoughAShorterOneIsNearerButTooFar() {
        assertThat(Nearest.to("abxxefghi", List.of("abcdefghi", "ab"))).contains("abcdefghi");
    }

    @Test
    void theHintEndsTheSentence() {
        assertThat(Nearest.hint("wlak", List.of("walk"))).isEqualTo(".");
        assertThat(Nearest.hint("walkk", List.of("walk"))).isEqualTo("; did you mean walk?");
    }

    @Test
    void aVeryLongWordIsNearToNothingAndTakesNoTime() {
        assertTimeout(
                Duration.ofSeconds(1),
                () -> assertThat(Nearest.to("x".repeat(5_000_000), List.of("at_least")))
                        .isEmpty());
    }
}
