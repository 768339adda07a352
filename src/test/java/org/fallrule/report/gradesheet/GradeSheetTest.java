package org.fallrule.report.gradesheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Written;
import org.fallrule.report.SampleRules;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** Values worked out by hand on a plane. */
class GradeSheetTest {
    /** Ground that falls evenly from 10 ft at x = 0 to 9 ft at x = 100. */
    private static final String PLANE = "-20 -20 10.2, 120 -20 8.8, 120 20 8.8, -20 20 10.2";

    private static final String[] FOUR_INCH = {
        "diameter = 4 in", "outside_diameter = 4.5 in", "invert_up = 7 ft", "invert_down = 6.75 ft"
    };

    private static PlanInFeet pipe(String line, String... attributes) {
        return plan().with(Role.PIPE, "P-1", line, attributes)
                .with(Role.INLET, "IN-1", "POINT (0 0)")
                .with(Role.OUTFALL, "OF-1", "POINT (25 0)");
    }

    private static Settings every(String every) {
        return new Settings(length(every), length("4 in"), HandZones.given(length("24 in")));
    }

    private static Written length(String text) {
        return Written.parse(text, Dimension.LENGTH);
    }

    private static GradeSheet sheet(PlanInFeet plan, String every) {
        return GradeSheet.of(SiteAnalysis.of(plan.site()), every(every));
    }

    private static List<String> rows(PlanInFeet plan, String every) {
        GradeSheet sheet = sheet(plan, every);
        GradeWords words = new GradeWords(sheet);
        PipeGrade pipe = sheet.pipes().get(0);
        return pipe.rows().stream()
                .map(row -> String.join("|", words.cells(pipe, row)))
                .toList();
    }

    @Test
    void rowsStandEveryTenFeetAndAtTheEnds() {
        // cut = ground - (invert - 1/4 in wall - 4 in bedding) = ground - invert + 0.354 ft
        assertThat(rows(pipe("LINESTRING (0 0, 25 0)", FOUR_INCH).spots(PLANE), "10 ft"))
                .containsExactly(
                        "0+00.0|10.00|7.00|3.35|0.10||inlet IN-1",
                        "0+10.0|9.90|6.90|3.35|0.10||",
                        "0+20.0|9.80|6.80|3.35|0.05||",
                        "0+25.0|9.75|6.75|3.35|||outfall OF-1");
    }

    @Test
    void aSheetInMetresIsMetricThroughout() {
        // 25 ft = 7.62 m; 7 ft = 2.1336 m; fall of 5 m at 1 % = 0.05 m
        assertThat(rows(pipe("LINESTRING (0 0, 25 0)", FOUR_INCH).spots(PLANE), "5 m"))
                .containsExactly(
                        "0.000|3.048|2.134|1.022|0.050||inlet IN-1",
                        "5.000|2.998|2.084|1.022|0.027||",
                        "7.620|2.972|2.057|1.022|||outfall OF-1");
    }

    @Test
    void aBendHasARowOfItsOwn() {
        assertThat(rows(pipe("LINESTRING (0 0, 12 0, 12 5, 25 0)", FOUR_INCH), "10 ft"))
                .anyMatch(row -> row.startsWith("0+12.0|?|") && row.endsWith("|bend"))
                .anyMatch(row -> row.startsWith("0+17.0|?|") && row.endsWith("|bend"));
    }

    @Test
    void aCrossingAndTheReachAroundItAreFlagged() {
        PlanInFeet crossed = pipe("LINESTRING (0 0, 25 0)", FOUR_INCH)
                .spots(PLANE)
                .with(
                        Role.UTILITY,
                        "G-1",
                        "LINESTRING (10 -9, 10 9)",
                        "kind = gas",
                        "depth = 24 in",
                        "diameter = 3 in");
        // half of 3 in + 24 in + half of 4.5 in = 27.75 in = 2.3125 ft on both sides
        assertThat(rows(crossed, "10 ft"))
                .containsExactly(
                        "0+00.0|10.00|7.00|3.35|0.08||inlet IN-1",
                        "0+07.7|9.92|6.92|3.35|0.02|hand|by hand from here: gas G-1",
                        "0+10.0|9.90|6.90|3.35|0.02|hand|crosses gas G-1, said to lie 24 in deep",
                        "0+12.3|9.88|6.88|3.35|0.08|hand|by hand to here: gas G-1",
                        "0+20.0|9.80|6.80|3.35|0.05||",
                        "0+25.0|9.75|6.75|3.35|||outfall OF-1");
    }

    @Test
    void whatNoRuleSpeaksOfIsSaidNotToBeFlagged() {
        // the sample rules have digging by hand along sprinkler lines only
        Settings settings = new Settings(length("10 ft"), length("4 in"), HandZones.of(SampleRules.load()));
        PlanInFeet crossed = pipe("LINESTRING (0 0, 25 0)", FOUR_INCH)
                .with(Role.UTILITY, "G-1", "LINESTRING (5 -9, 5 9)", "kind = gas", "diameter = 3 in")
                .with(Role.UTILITY, "I-1", "LINESTRING (15 -9, 15 9)", "kind = irrigation");
        GradeSheet sheet = GradeSheet.of(SiteAnalysis.of(crossed.site()), settings);

        // 1 in for half of 2 in, which the rule has, + 24 in + half of 4.5 in = 2.2708 ft on both sides
        assertThat(sheet.pipes().get(0).reaches()).singleElement().satisfies(reach -> {
            assertThat(reach.utility().id()).isEqualTo("I-1");
            assertThat(reach.from() / 0.3048).isCloseTo(15 - 27.25 / 12, within(1e-6));
        });
        assertThat(sheet.utilities())
                .hasValue("No rule says how near to dig by hand to gas G-1: nothing is flagged there.");
        assertThat(sheet.pipes().get(0).missing())
                .contains("Size of irrigation I-1 is not given: by hand is told for 2 in, as the rule has it.");
        assertThat(new GradeWords(sheet).reading())
                .anyMatch(line -> line.startsWith("By hand: within 24 in of the outside edge of a utility with kind ="
                        + " 'irrigation' on the plan, by rule sprinkler-hand-dig in rules/baseline.yaml:"));
    }

    @Test
    void whatThePlanDoesNotTellIsNamedAndNotGuessed() {
        PlanInFeet bare = pipe("LINESTRING (0 0, 25 0)", "invert_up = 7 ft");
        assertThat(rows(bare, "20 ft"))
                .containsExactly("0+00.0|?|7.00|?|?||inlet IN-1", "0+20.0|?|?|?|?||", "0+25.0|?|?|?|||outfall OF-1");
        assertThat(sheet(bare, "20 ft").pipes().get(0).missing())
                .containsExactly(
                        "Invert at the downstream end is not given.",
                        "Size is not given, so the cut is not told.",
                        "Ground is not known at 3 of 3 rows.");
    }

    @Test
    void aWallThatIsNotKnownIsSaidNotToBeCounted() {
        PlanInFeet nominal = pipe(
                "LINESTRING (0 0, 25 0)",
                "diameter = 4 in",
                "material = hdpe_corrugated",
                "invert_up = 7 ft",
                "invert_down = 6.75 ft");
        assertThat(sheet(nominal.spots(PLANE), "10 ft").pipes().get(0).missing())
                .containsExactly("Wall is not known and not counted: the cut is deeper by it.");
    }

    @Test
    void aPlanThatIsSilentOfUtilitiesIsSaidToBe() {
        PlanInFeet silent = pipe("LINESTRING (0 0, 25 0)", FOUR_INCH);
        assertThat(GradeSheetText.write(sheet(silent, "10 ft"))).contains("THE PLAN SAYS NOTHING OF UTILITIES");
        assertThat(GradeSheetText.write(sheet(silent.absent(Role.UTILITY), "10 ft")))
                .contains("The plan states that there are no utilities.");
        assertThat(GradeSheetText.write(sheet(silent.empty(Role.UTILITY), "10 ft")))
                .doesNotContain("NOTHING OF UTILITIES", "no utilities");
    }

    @Test
    void aPipeThatRisesIsSaidToRise() {
        GradeSheet sheet = sheet(
                pipe("LINESTRING (0 0, 25 0)", "diameter = 4 in", "invert_up = 6 ft", "invert_down = 6.25 ft"),
                "10 ft");
        assertThat(new GradeWords(sheet).facts(sheet.pipes().get(0)))
                .anyMatch(fact -> fact.contains("rises 0.25 ft"))
                .anyMatch(fact -> fact.startsWith("RISES along the flow: 1/4 in over 2 ft"));
    }

    @Test
    void theTextStaysWithinEightyColumns() {
        PlanInFeet crossed = pipe("LINESTRING (0 0, 25 0)", FOUR_INCH)
                .with(Role.UTILITY, "W".repeat(120), "LINESTRING (10 -9, 10 9)", "kind = water_service");
        String text = GradeSheetText.write(sheet(crossed, "10 ft"));
        assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(text).contains("one-call", "CAUTIONS", "unprotected trench");
    }

    @Test
    void theTableIsQuotedAndHoldsNoFormula() {
        PlanInFeet hostile = plan().with(Role.PIPE, "=cmd(\"x\"),1", "LINESTRING (0 0, 25 0)", FOUR_INCH);
        assertThat(List.of(GradeSheetCsv.write(sheet(hostile, "10 ft")).split("\r\n", -1)))
                .hasSize(6)
                .element(1)
                .isEqualTo("plan,\"'=cmd(\"\"x\"\"),1\",0+00.0,0.00,,7.00,,0.10,no,joint,\"ground; cut\"");
    }
}
