package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What each book wrote of a rule, and which of it counts. */
@SuppressWarnings("NullAway") // what is missing fails the test
class RuleHistoryTest {
    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void books() {
        books = new Books(folder).with("baseline.yaml", """
                rules:
                  walk: {title: Away from the walk, check: clearance, from: outfall, to: walk, at_least: 5 ft,
                    weight: must, basis: {kind: practice}}
                """);
    }

    private RuleHistory walk(String county, String house) {
        return books
                .with("counties/c.yaml", "builds_on: ../baseline.yaml\n" + county)
                .with("house/h.yaml", house)
                .library()
                .open("c", Optional.of("h"), LocalDate.parse("2026-06-01"))
                .histories()
                .stream()
                .filter(each -> each.id().equals("walk"))
                .findFirst()
                .orElseThrow();
    }

    private static List<Optional<String>> texts(RuleHistory history, String key) {
        return history.of(key).stream().map(entry -> entry.text(key)).toList();
    }

    @Test
    void whatEachBookSetIsKeptTheLowestFirst() {
        RuleHistory walk = walk(
                "rules: {walk: {at_least: 8 ft, basis: {kind: practice}}}\n",
                "rules: {walk: {at_least: 9 ft, basis: {kind: practice}}}\n");

        assertThat(texts(walk, "at_least"))
                .containsExactly(Optional.of("5 ft"), Optional.of("8 ft"), Optional.of("9 ft"));
        assertThat(texts(walk, "title")).containsExactly(Optional.of("Away from the walk"));
        assertThat(walk.entries()).extracting(RuleHistory.Entry::fate).containsOnly(RuleHistory.Fate.LAID);
        assertThat(walk.dropped()).isEmpty();
    }

    @Test
    void aKeyThatHoldsMoreThanOneValueHasNoText() {
        assertThat(texts(walk("", ""), "basis")).containsExactly(Optional.empty());
        assertThat(walk("", "").of("nothing")).isEmpty();
    }

    @Test
    void whatIsNotInForceOnTheDayDoesNotCount() {
        RuleHistory walk =
                walk("rules: {walk: {at_least: 8 ft, effective: 2026-07-01, basis: {kind: practice}}}\n", "");

        assertThat(texts(walk, "at_least")).containsExactly(Optional.of("5 ft"));
        assertThat(walk.entries())
                .extracting(RuleHistory.Entry::fate)
                .containsExactly(RuleHistory.Fate.LAID, RuleHistory.Fate.NOT_IN_FORCE);
    }

    @Test
    void aRuleThatTheLastBookInForceDropsIsDroppedAndNothingBelowCounts() {
        RuleHistory walk = walk("rules: {walk: {drop: true, reason: no walks here}}\n", "");

        assertThat(walk.dropped())
                .hasValueSatisfying(entry -> assertThat(entry.text("reason")).contains("no walks here"));
        assertThat(walk.of("at_least")).isEmpty();
    }

    @Test
    void aDropThatHasEndedOrIsTakenBackDropsNothing() {
        String ended = "rules: {walk: {drop: true, reason: no walks here, effective: {until: 2026-05-31}}}\n";
        String whole =
                "rules: {walk: {title: Back, check: clearance, from: outfall, to: walk, at_least: 6 ft, weight: must,"
                        + " basis: {kind: practice}}}\n";

        assertThat(walk(ended, "").dropped()).isEmpty();
        assertThat(texts(walk(ended, ""), "at_least")).containsExactly(Optional.of("5 ft"));
        RuleHistory back = walk("rules: {walk: {drop: true, reason: no walks here}}\n", whole);
        assertThat(back.dropped()).isEmpty();
        assertThat(texts(back, "at_least")).containsExactly(Optional.of("6 ft"));
    }
}
