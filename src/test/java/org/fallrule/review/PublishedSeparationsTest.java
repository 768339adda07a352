package org.fallrule.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.UTILITY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Separations that are published, each written into a rule book and held against plans that meet and fail them. */
class PublishedSeparationsTest {
    @TempDir
    Path folder;

    /** Recommended Standards for Water Works, 2018, 8.8.2 and 8.8.3: 10 ft beside, 18 in across; text from memory. */
    private static final String WATER_WORKS = """
            rules:
              main:
                title: Water mains
                check: separation
                from: utility
                from_where: "kind = 'water_main'"
                beside_at_least: 10 ft
                across_at_least: 18 in
                near_crossing: 15 ft
                size_if_unknown: 12 in
                weight: must
                basis: {kind: standard, document: Recommended Standards for Water Works, section: 8.8.2 and 8.8.3}
            """;

    /**
     * F.A.C. 62-555.314: (1)(a) 3 ft beside a storm sewer, read; (2) the main at least 6 in above or 12 in below it, its joints
     * 3 ft from it or a whole length centred, from memory.
     */
    private static final String FLORIDA = """
            rules:
              main:
                title: Water mains
                check: separation
                from: utility
                from_where: "kind = 'water_main'"
                beside_at_least: 3 ft
                over_at_least: 12 in
                under_at_least: 6 in
                near_crossing: 5 ft
                size_if_unknown: 12 in
                weight: must
                basis: {kind: statute, document: F.A.C. 62-555.314}
              joints:
                title: Joints
                check: joint_distance
                from: utility
                from_where: "kind = 'water_main'"
                at_least: 3 ft
                size_if_unknown: 12 in
                weight: must
                basis: {kind: statute, document: F.A.C. 62-555.314}
            """;

    /**
     * 22 CCR 64572: (b) 4 ft beside and the main at least 1 ft above, (d) crossings of 45 degrees or more, (e) no joints within
     * 8 ft; that (b) names storm drainage is from memory.
     */
    private static final String CALIFORNIA = """
            rules:
              main:
                title: Water mains
                check: separation
                from: utility
                from_where: "kind = 'water_main'"
                beside_at_least: 4 ft
                utility_over_at_least: 1 ft
                near_crossing: 6 ft
                size_if_unknown: 12 in
                weight: must
                basis: {kind: statute, document: 22 CCR 64572}
              angle:
                title: Angle
                check: crossing_angle
                from: utility
                from_where: "kind = 'water_main'"
                at_least: 45 deg
                weight: must
                basis: {kind: statute, document: 22 CCR 64572}
              joints:
                title: Joints
                check: joint_distance
                from: utility
                from_where: "kind = 'water_main'"
                at_least: 8 ft
                size_if_unknown: 12 in
                weight: must
                basis: {kind: statute, document: 22 CCR 64572}
            """;

    /** A water main of 12 in outside along the x axis, its top at 96 ft. */
    private static final PlanInFeet MAIN = plan().with(
                    UTILITY,
                    "U-1",
                    "LINESTRING (-100 0, 200 0)",
                    "kind = water_main",
                    "outside_diameter = 12 in",
                    "top = 96 ft");

    private static PlanInFeet pipe(String wkt, String... more) {
        String[] attributes = java.util.Arrays.copyOf(more, more.length + 1);
        attributes[more.length] = "outside_diameter = 6 in";
        return MAIN.with(PIPE, "P-1", wkt, attributes);
    }

    private RuleBook book(String text) throws IOException {
        Files.createDirectories(folder.resolve("counties"));
        Files.writeString(folder.resolve("counties/c.yaml"), "title: c\n" + text);
        return new RuleLibrary(folder, "rules").load("c", Optional.empty());
    }

    private List<Outcome> under(String text, String rule, PlanInFeet plan) throws IOException {
        return Reviewer.review(plan.analysis(), book(text), LocalDate.of(2026, 6, 1)).findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::outcome)
                .toList();
    }

    @Test
    void waterWorksBeside() throws IOException {
        // 10 ft between outsides are 10.75 ft between centrelines
        assertThat(under(WATER_WORKS, "main", pipe("LINESTRING (0 10.75, 60 10.75)")))
                .containsExactly(Outcome.MEETS);
        assertThat(under(WATER_WORKS, "main", pipe("LINESTRING (0 10.7, 60 10.7)")))
                .containsExactly(Outcome.FAILS);
    }

    @Test
    void waterWorksAcrossEitherWay() throws IOException {
        assertThat(under(WATER_WORKS, "main", crossing(97.5))).containsExactly(Outcome.MEETS);
        assertThat(under(WATER_WORKS, "main", crossing(97.4))).containsExactly(Outcome.FAILS);
        assertThat(under(WATER_WORKS, "main", crossing(93))).containsExactly(Outcome.MEETS);
        assertThat(under(WATER_WORKS, "main", crossing(93.1))).containsExactly(Outcome.FAILS);
    }

    private static PlanInFeet crossing(double invert) {
        return pipe("LINESTRING Z (0 -10 " + invert + ", 0 10 " + invert + ")", "laying_length = 20 ft");
    }

    @Test
    void floridaBeside() throws IOException {
        assertThat(under(FLORIDA, "main", pipe("LINESTRING (0 3.75, 60 3.75)"))).containsExactly(Outcome.MEETS);
        assertThat(under(FLORIDA, "main", pipe("LINESTRING (0 3.7, 60 3.7)"))).containsExactly(Outcome.FAILS);
    }

    @Test
    void floridaAsksTwelveInchesOfADrainOverTheMainAndSixUnderIt() throws IOException {
        // over: the drain's bottom at 97; under: its top at 94.5, half a foot below the main's bottom
        assertThat(mainAlone(FLORIDA, crossing(97))).containsExactly(Outcome.MEETS);
        assertThat(mainAlone(FLORIDA, crossing(96.9))).containsExactly(Outcome.FAILS);
        assertThat(mainAlone(FLORIDA, crossing(94))).containsExactly(Outcome.MEETS);
        assertThat(mainAlone(FLORIDA, crossing(94.1))).containsExactly(Outcome.FAILS);
    }

    /** What is found of heights: the part of the run away from the crossing keeps its distance. */
    private List<Outcome> mainAlone(String text, PlanInFeet plan) throws IOException {
        List<Outcome> outcomes = under(text, "main", plan);
        assertThat(outcomes).hasSize(2).startsWith(Outcome.MEETS);
        return outcomes.subList(1, 2);
    }

    @Test
    void floridaJoints() throws IOException {
        assertThat(under(FLORIDA, "joints", crossing(97))).containsExactly(Outcome.MEETS);
        assertThat(under(FLORIDA, "joints", pipe("LINESTRING (0 -3.4, 0 30)"))).containsExactly(Outcome.FAILS);
    }

    @Test
    void californiaWantsTheMainOnTop() throws IOException {
        // the main's bottom at 95, the drain's top half a foot over its invert
        assertThat(mainAlone(CALIFORNIA, crossing(93.5))).containsExactly(Outcome.MEETS);
        assertThat(mainAlone(CALIFORNIA, crossing(93.6))).containsExactly(Outcome.FAILS);
        assertThat(mainAlone(CALIFORNIA, crossing(99))).containsExactly(Outcome.FAILS);
    }

    @Test
    void californiaBeside() throws IOException {
        assertThat(under(CALIFORNIA, "main", pipe("LINESTRING (0 4.75, 60 4.75)")))
                .containsExactly(Outcome.MEETS);
        assertThat(under(CALIFORNIA, "main", pipe("LINESTRING (0 4.7, 60 4.7)")))
                .containsExactly(Outcome.FAILS);
    }

    @Test
    void californiaAngleAndJoints() throws IOException {
        assertThat(under(CALIFORNIA, "angle", pipe("LINESTRING (-20 -20, 20 20)")))
                .containsExactly(Outcome.MEETS);
        assertThat(under(CALIFORNIA, "angle", pipe("LINESTRING (-20 -19, 20 19)")))
                .containsExactly(Outcome.FAILS);
        assertThat(under(CALIFORNIA, "joints", pipe("LINESTRING (0 -30, 0 30)", "laying_length = 17 ft")))
                .containsExactly(Outcome.MEETS);
        assertThat(under(CALIFORNIA, "joints", pipe("LINESTRING (0 -30, 0 30)", "laying_length = 16 ft")))
                .containsExactly(Outcome.FAILS);
    }
}
