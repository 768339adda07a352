package org.fallrule.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Weight;
import org.fallrule.locality.Locality;
import org.fallrule.measure.Written;
import org.fallrule.rulebook.AsBuiltTolerances;
import org.fallrule.rulebook.AsBuiltTolerances.Measure;
import org.fallrule.rulebook.AsBuiltTolerances.Tolerance;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Work as built against a design: a pipe that falls 1 ft over 100 ft to an outfall. The tolerances, 0.1 ft in height, 0.25 % in
 * slope and 0.5 ft in plan, are common practice without a published source.
 */
class AsBuiltTest {
    private static final Place HERE = Place.of("rules/a.yaml").at(3, 1);
    private static final PlanInFeet DESIGN = PlanInFeet.plan()
            .with(
                    Role.PIPE,
                    "P-1",
                    "LINESTRING (0 0, 100 0)",
                    "diameter = 4 in",
                    "invert_up = 10 ft",
                    "invert_down = 9 ft")
            .with(Role.INLET, "CB-1", "POINT (0 0)", "kind = basin", "rim = 12 ft")
            .with(Role.OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight", "invert = 9 ft");

    private static AsBuiltTolerances tolerances(String height, String slope, String position) {
        Basis basis = new Basis(
                Basis.Kind.PRACTICE, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), HERE);
        Map<Measure, Tolerance> all = new EnumMap<>(Measure.class);
        Map.of(Measure.INVERT, height, Measure.RIM, height, Measure.SLOPE, slope, Measure.POSITION, position)
                .forEach((measure, text) -> all.put(
                        measure, new Tolerance(Written.parse(text, measure.dimension()), Weight.SHOULD, basis, HERE)));
        return new AsBuiltTolerances(all);
    }

    private static Comparison compared(PlanInFeet built, AsBuiltTolerances tolerances) {
        RuleBook book = new RuleBook(List.of(), Locality.UNSAID, List.of(), List.of(), List.of(), tolerances);
        LocalDate day = LocalDate.of(2026, 6, 1);
        return Comparison.of(Submittal.of(DESIGN.site(), book, day), Submittal.of(built.site(), book, day));
    }

    private static List<String> found(PlanInFeet built) {
        return compared(built, tolerances("0.1 ft", "0.25 %", "0.5 ft")).asBuilt().stream()
                .map(finding -> finding.rule().replace("as-built-", "") + " " + PlanInFeet.line(finding.observation()))
                .toList();
    }

    private static PlanInFeet builtPipe(String place, String up, String down) {
        return PlanInFeet.plan()
                .with(
                        Role.PIPE,
                        "P-1",
                        "LINESTRING (" + place + ")",
                        "status = as_built",
                        "diameter = 4 in",
                        "invert_up = " + up,
                        "invert_down = " + down)
                .with(Role.OUTFALL, "OF-1", "POINT (100 0)", "status = as_built", "kind = daylight", "invert = 9 ft");
    }

    @ParameterizedTest
    @CsvSource({
        "10.09 ft, invert meets P-1: 0.09 ft",
        "10.10 ft, invert meets P-1: 0.10 ft",
        "9.90 ft, invert meets P-1: 0.10 ft",
        "3.07848 m, invert meets P-1: 0.10 ft",
        "10.11 ft, invert fails P-1: 0.11 ft",
        "9.88 ft, invert fails P-1: 0.12 ft",
    })
    void anInvertExactlyAtTheToleranceLiesWithinIt(String up, String line) {
        assertThat(found(builtPipe("0 0, 100 0", up, "9 ft"))).anyMatch(each -> each.startsWith(line));
    }

    @Test
    void itSaysWhichWayTheWorkIsOff() {
        assertThat(found(builtPipe("0 0, 100 0", "10.2 ft", "8.8 ft")))
                .contains(
                        "invert fails P-1: 0.20 ft; designed 10.00 ft, built 10.20 ft, too high",
                        "invert fails P-1: 0.20 ft; designed 9.00 ft, built 8.80 ft, too low",
                        "slope fails P-1: 0.40 %; designed 1.00 %, built 1.40 %");
    }

    @Test
    void aSlopeExactlyAtTheToleranceLiesWithinIt() {
        assertThat(found(builtPipe("0 0, 100 0", "10.25 ft", "9 ft")))
                .anyMatch(line -> line.startsWith("slope meets P-1"));
        assertThat(found(builtPipe("0 0, 100 0", "10.26 ft", "9 ft")))
                .anyMatch(line -> line.startsWith("slope fails P-1"));
    }

    @ParameterizedTest
    @CsvSource({"0.4, meets", "0.5, meets", "0.51, fails"})
    void aPipeAsideOfItsDesign(double feet, String outcome) {
        assertThat(found(builtPipe("0 " + feet + ", 100 0", "10 ft", "9 ft")))
                .anyMatch(line -> line.startsWith("position " + outcome + " P-1"));
    }

    @Test
    void aPipeThatStopsShortIsOffByWhatIsMissing() {
        assertThat(found(builtPipe("0 0, 98 0", "10 ft", "9 ft"))).contains("position fails P-1: 2.00 ft; in plan");
    }

    @Test
    void withinTheAccuracyOfTheSurveyItIsBorderline() {
        PlanInFeet built = builtPipe("0 0, 100 0", "10.08 ft", "9 ft").surveyedTo(0.1, 0.05);

        assertThat(found(built)).anyMatch(line -> line.startsWith("invert borderline P-1: 0.08 ft"));
    }

    @Test
    void whatWasNotMeasuredCannotBeToldAndIsNamed() {
        assertThat(found(builtPipe("0 0, 100 0", "10 ft", "9 ft")))
                .contains(
                        "rim cannot_tell CB-1; lacks the rim of inlet CB-1 as built",
                        "position cannot_tell CB-1; lacks the place of inlet CB-1 as built");
    }

    private static PlanInFeet point(PlanInFeet plan, String on, String kind, String place, String elevation) {
        int number = plan.site().features(Role.AS_BUILT).size() + 1;
        return plan.with(
                Role.AS_BUILT,
                "#" + number,
                "POINT (" + place + ")",
                "measured_on = " + on,
                "kind = " + kind,
                "elevation = " + elevation);
    }

    @Test
    void pointsAloneWillDo() {
        PlanInFeet points = point(PlanInFeet.plan(), "P-1", "invert_up", "0 0.3", "10.1 ft");
        points = point(points, "P-1", "invert_down", "100 0.6", "9.3 ft");
        points = point(points, "CB-1", "rim", "0 0", "12 ft");

        assertThat(found(points))
                .containsExactly(
                        "invert meets P-1: 0.10 ft; designed 10.00 ft, built 10.10 ft, too high",
                        "invert fails P-1: 0.30 ft; designed 9.00 ft, built 9.30 ft, too high",
                        "slope meets P-1: 0.20 %; designed 1.00 %, built 0.80 %",
                        "position fails P-1: 0.60 ft; in plan",
                        "rim meets CB-1: 0.00 ft; as designed",
                        "position meets CB-1: 0.00 ft; in plan",
                        "invert cannot_tell OF-1; lacks the invert of outfall OF-1 as built",
                        "position cannot_tell OF-1; lacks the place of outfall OF-1 as built");
    }

    /** The tolerance is 0.1 ft: a height that is off by 0.08 ft and known to 0.05 ft may lie beyond it. */
    @Test
    void aPointSaysByItselfHowWellItIsKnown() {
        PlanInFeet coarse = PlanInFeet.plan()
                .with(
                        Role.AS_BUILT,
                        "#1",
                        "POINT (0 0)",
                        "measured_on = CB-1",
                        "kind = rim",
                        "elevation = 12.08 ft",
                        "vertical_accuracy = 0.05 ft");
        PlanInFeet fine = point(PlanInFeet.plan(), "CB-1", "rim", "0 0", "12.08 ft");

        assertThat(found(coarse)).anyMatch(line -> line.startsWith("rim borderline CB-1: 0.08 ft"));
        assertThat(found(coarse.surveyedTo(0.1, 0.01)))
                .anyMatch(line -> line.startsWith("rim borderline CB-1: 0.08 ft"));
        assertThat(found(fine.surveyedTo(0.1, 0.01))).anyMatch(line -> line.startsWith("rim meets CB-1: 0.08 ft"));
    }

    @Test
    void onPointsAloneTheRulesAreNotRun() {
        Comparison comparison = compared(
                point(PlanInFeet.plan(), "CB-1", "rim", "0 0", "12 ft"), tolerances("0.1 ft", "0.25 %", "0.5 ft"));

        assertThat(comparison.after().isPlan()).isFalse();
        assertThat(comparison.findings()).isEmpty();
        assertThat(comparison.data()).isEmpty();
        assertThat(comparison.gotWorse()).isFalse();
        assertThat(comparison.verdict()).isEqualTo("No value as built beyond its tolerance, 6 not measured.");
    }

    @Test
    void aPointOnNothingOfTheDesignIsAProblem() {
        PlanInFeet points = point(PlanInFeet.plan(), "CB-9", "rim", "0 0", "12 ft");

        assertThat(compared(points, tolerances("0.1 ft", "0.25 %", "0.5 ft")).problems())
                .extracting(Fault::says)
                .containsExactly("is measured on CB-9, which is no part of the design; give measured_on the name of one"
                        + " pipe, inlet, cleanout or outfall");
    }

    @Test
    void whereNoBookGivesAToleranceItIsSaidThatNothingWasChecked() {
        Comparison comparison = compared(builtPipe("0 0, 100 0", "11 ft", "9 ft"), AsBuiltTolerances.UNSAID);

        assertThat(comparison.asBuilt()).isEmpty();
        assertThat(comparison.problems())
                .hasSize(4)
                .allMatch(fault -> fault.says().contains("was not checked"));
    }

    @Test
    void workBeyondItsToleranceIsForTheWorse() {
        Comparison comparison =
                compared(builtPipe("0 0, 100 0", "10.2 ft", "9 ft"), tolerances("0.1 ft", "0.25 %", "0.5 ft"));

        assertThat(comparison.gotWorse()).isTrue();
        assertThat(comparison.fails()).isFalse();
    }
}
