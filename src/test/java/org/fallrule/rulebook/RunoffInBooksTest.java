package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Runoff;
import org.fallrule.locality.Setting;
import org.fallrule.locality.Stated;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.method.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runoff coefficients as rule books state them. */
class RunoffInBooksTest {
    @TempDir
    Path folder;

    private Books county(String... lines) {
        return new Books(folder)
                .with("counties/c.yaml", "runoff:\n  basis: {kind: practice}\n  " + String.join("\n  ", lines) + "\n");
    }

    private Runoff runoff(String... lines) {
        return county(lines).county().locality().runoff();
    }

    @Test
    void aSurfaceWithOneCoefficientHasItWithTheLineAndTheBasis() {
        Stated<Ratio> roof = runoff("roof: 0.95")
                .coefficient("roof", Setting.UNKNOWN)
                .value()
                .orElseThrow();

        assertThat(roof.value()).isEqualTo(new Ratio(0.95));
        assertThat(roof.setBy().fileAndLine()).isEqualTo("rules/counties/c.yaml:4");
        assertThat(roof.basis()).contains("common practice");
    }

    @Test
    void theFirstCaseThatHoldsCounts() {
        Runoff runoff = runoff(
                "lawn: [{when: \"soil = 'clay' AND slope_percent >= 7\", is: 0.35},",
                "       {when: \"return_period_yr >= 100\", is: 0.3}, {is: 0.17}]");

        assertThat(coefficient(runoff, setting("clay", 7, 10))).isEqualTo(0.35);
        assertThat(coefficient(runoff, setting("clay", 6.9, 10))).isEqualTo(0.17);
        assertThat(coefficient(runoff, setting("sand", 8, 100))).isEqualTo(0.3);
    }

    @Test
    void whatIsNotKnownIsNeverPassedOver() {
        Runoff runoff = runoff("lawn: [{when: \"soil = 'clay'\", is: 0.35}, {is: 0.17}]");

        assertThat(runoff.coefficient("lawn", Setting.UNKNOWN).why())
                .isEqualTo(
                        "the runoff coefficient of lawn hangs on soil (rules/counties/c.yaml:4), which is not known");
    }

    @Test
    void aSurfaceThatNoBookSpeaksOfNamesThoseThatAreKnown() {
        assertThat(runoff("roof: 0.95", "walk: 0.85")
                        .coefficient("pond", Setting.UNKNOWN)
                        .why())
                .isEqualTo("the rule books give no runoff coefficient for pond; known: roof, walk");
        assertThat(Runoff.UNSAID.coefficient("roof", Setting.UNKNOWN).why()).endsWith("known: none");
    }

    @Test
    void whereNoCaseHoldsThereIsNoAnswer() {
        assertThat(runoff("lawn: [{when: \"soil = 'clay'\", is: 0.35}]")
                        .coefficient("lawn", setting("sand", 1, 10))
                        .why())
                .contains("no case of the runoff coefficient of lawn holds");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "roof: 1.1 | 4:9: \"1.1\" is above 1; no more runs off than it rains, give 0 to 1",
                "roof: -0.1 | 4:9: \"-0.1\" is negative; give zero or more",
                "roof: most | 4:9: \"most\" is not a number; give a ratio such as 0.85",
                "roof: 90 % | 4:9: \"90 %\": \"%\" is not a unit of ratio; give a number alone",
                "roof: {is: 0.9} | 4:9: roof: found keys with values, wanted a coefficient or cases with conditions",
                "roof: [] | 4:9: roof: found a list, wanted a coefficient or cases with conditions",
                "roof: [0.9] | 4:10: found \"0.9\", wanted {when: condition, is: coefficient}",
                "roof: [{when: \"soil = 'clay'\"}] | 4:10: the key is is missing; give the coefficient, from 0 to 1",
                "roof: [{is: 0.9, at: 3}] | 4:20: unknown key at in a runoff coefficient. Known: when, is",
                "roof: [{is: 0.9}, {is: 0.8}] | 4:21: this can never apply, because the case before it has no condition;"
                        + " put that one last",
                "roof: [{when: \"soils = 'clay'\", is: 0.9}] | 4:17: unknown name soils in the condition soils = 'clay'; did"
                        + " you mean soil? Known: soil, slope_percent, return_period_yr",
                "Roof: 0.9 | 4:3: runoff: a surface is named in small letters, such as roof or bare_soil",
            })
    void whatIsWrongIsRefusedWithItsPlace(String line, String fault) {
        assertThat(county(line).faultsOfCounty()).containsExactly("rules/counties/c.yaml:" + fault);
    }

    @Test
    void coefficientsStateTheirBasis() {
        assertThat(new Books(folder)
                        .with("counties/c.yaml", "runoff: {roof: 0.9}\n")
                        .faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:2:9: runoff has no basis; give kind, document and section");
    }

    @Test
    void aLaterBookChangesSingleSurfaces() {
        Books books = new Books(folder)
                .with("baseline.yaml", "runoff: {basis: {kind: practice}, roof: 0.9, walk: 0.8}\n")
                .with(
                        "counties/c.yaml",
                        "builds_on: ../baseline.yaml\nrunoff: {basis: {kind: practice}, walk: 0.85}\n");
        Runoff runoff = books.county().locality().runoff();

        assertThat(runoff.coefficient("roof", Setting.UNKNOWN)
                        .value()
                        .orElseThrow()
                        .setBy()
                        .file())
                .isEqualTo("rules/baseline.yaml");
        assertThat(runoff.coefficient("walk", Setting.UNKNOWN)
                        .value()
                        .orElseThrow()
                        .value())
                .isEqualTo(new Ratio(0.85));
    }

    /** ASCE coefficients in Schwab et al., Soil and Water Conservation Engineering, 4th edition: the upper end of each. */
    @ParameterizedTest
    @CsvSource({
        "roof, clay, 1, 0.95",
        "drive, clay, 1, 0.85",
        "walk, clay, 1, 0.85",
        "brick, clay, 1, 0.85",
        "street, clay, 1, 0.95",
        "unimproved, clay, 1, 0.30",
        "lawn, sand, 2, 0.10",
        "lawn, sandy_loam, 4, 0.15",
        "lawn, sand, 7, 0.20",
        "lawn, clay, 2, 0.17",
        "lawn, loam, 4, 0.22",
        "lawn, clay, 7, 0.35"
    })
    void theBaselineHasThePublishedCoefficients(String surface, String soil, double percent, double coefficient) {
        assertThat(shipped()
                        .coefficient(surface, setting(soil, percent, 10))
                        .value()
                        .orElseThrow()
                        .value())
                .isEqualTo(new Ratio(coefficient));
    }

    @Test
    void aLawnOfUnknownSlopeCountsAsSteepAndOfUnknownSoilHasNoAnswer() {
        Setting flatUnknown = new Setting(Optional.of("clay"), Optional.empty(), Optional.empty());
        assertThat(coefficient(shipped(), flatUnknown)).isEqualTo(0.35);
        assertThat(shipped()
                        .coefficient(
                                "lawn", new Setting(Optional.empty(), Optional.of(new Slope(0.01)), Optional.empty()))
                        .why())
                .contains("hangs on soil");
    }

    private static Runoff shipped() {
        return new RuleLibrary(Path.of("rules"), "rules")
                .load("larkmoor", Optional.empty())
                .locality()
                .runoff();
    }

    private static double coefficient(Runoff runoff, Setting setting) {
        Answer<Stated<Ratio>> answer = runoff.coefficient("lawn", setting);
        return answer.value().orElseThrow().value().value();
    }

    private static Setting setting(String soil, double percent, int years) {
        return new Setting(
                Optional.of(soil), Optional.of(new Slope(percent / 100)), Optional.of(new ReturnPeriod(years)));
    }
}
