package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.locality.IntensityCurve;
import org.fallrule.locality.IntensityTable;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rain of a place as rule books state it. */
@SuppressWarnings("NullAway") // what is missing fails the test
class StormInBooksTest {
    private static final ReturnPeriod TEN = new ReturnPeriod(10);

    @TempDir
    Path folder;

    private Storm storm(String... lines) {
        return new Books(folder)
                .with("counties/c.yaml", "storm:\n  basis: {kind: practice}\n  " + String.join("\n  ", lines) + "\n")
                .county()
                .locality()
                .storm();
    }

    /** The faults of a storm whose given lines are 4 and on; its basis stands in line 3. */
    private List<String> faults(String... lines) {
        return new Books(folder)
                .with("counties/c.yaml", "storm:\n  basis: {kind: practice}\n  " + String.join("\n  ", lines) + "\n")
                .faultsOfCounty();
    }

    @Test
    void aTableOfOneReturnPeriodIsReadWithTheLineThatSetIt() {
        Storm storm = storm(
                "return_period: 10 yr",
                "shortest_duration: 5 min",
                "intensity: [{minutes: 5, by: 6.9 in/h}, {minutes: 10, by: 5.5 in/h}]");

        assertThat(storm.returnPeriod().orElseThrow().value()).isEqualTo(TEN);
        assertThat(storm.returnPeriod().orElseThrow().setBy().fileAndLine()).isEqualTo("rules/counties/c.yaml:4");
        assertThat(storm.returnPeriod().orElseThrow().basis()).contains("common practice");
        assertThat(storm.shortestDuration().orElseThrow().value()).isEqualTo(new Time(300));
        assertThat(storm.rainfall().get(TEN).setBy().fileAndLine()).isEqualTo("rules/counties/c.yaml:6");
        IntensityTable table = (IntensityTable) storm.rainfall().get(TEN).value();
        assertThat(table.rows())
                .extracting(row -> row.duration().in(Unit.MINUTE))
                .containsExactly(5.0, 10.0);
        assertThat(table.rows())
                .extracting(row -> Math.round(row.intensity().in(Unit.INCH_PER_HOUR) * 1e6))
                .containsExactly(6_900_000L, 5_500_000L);
    }

    @Test
    void tablesAndFormulasOfSeveralReturnPeriodsAreRead() {
        Storm storm = storm(
                "return_period: 10 yr",
                "intensity:",
                "  2 yr: [{minutes: 5, by: 5 in/h}]",
                "  10 yr: [{minutes: 5, by: 7 in/h}]",
                "curve:",
                "  100 yr: {form: a/(t+b)^c, a: 74.36, b: 7.85, c: 0.75, unit: in/h, minutes: [5, 60]}");

        assertThat(storm.rainfall().keySet()).extracting(ReturnPeriod::years).containsExactly(2, 10, 100);
        assertThat(storm.rainfall().get(new ReturnPeriod(100)).value()).isInstanceOf(IntensityCurve.class);
    }

    @Test
    void aFormulaOfTheSecondFormHasItsOwnLetters() {
        Storm storm = storm(
                "return_period: 10 yr",
                "curve: {form: c / (t^e + f), c: 96.6, e: 0.97, f: 13.90, unit: in/h, minutes: [5, 60]}");

        IntensityCurve curve = (IntensityCurve) storm.rainfall().get(TEN).value();
        assertThat(List.of(curve.scale(), curve.power(), curve.shift())).containsExactly(96.6, 0.97, 13.90);
        assertThat(curve.unit()).isEqualTo(Unit.INCH_PER_HOUR);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "return_period: 10 | 4:18: \"10\" is not a return period; give whole years with the unit, such as 10 yr",
                "return_period: 0 yr | 4:18: \"0 yr\" is not a return period; give whole years with the unit, such as"
                        + " 10 yr",
                "return_period: 1 % | 4:18: \"1 %\" is not a return period; give whole years with the unit, such as"
                        + " 10 yr",
                "shortest_duration: 5 | 4:22: \"5\" has no unit; give a time with min, s or h, such as 5 min",
                "shortest_duration: 0 min | 4:22: \"0 min\" is no duration; give one above zero",
                "shortest_duration: -5 min | 4:22: \"-5 min\" is no duration; give one above zero",
                "intensity: 6.9 in/h | 4:14: intensity: found \"6.9 in/h\", wanted rows or formulas",
                "intensity: [{minutes: 5, by: 7 in/h}] | 4:14: intensity: for which return period? Give return_period"
                        + " beside it, or write it under a key such as 10 yr",
                "intensity: {ten: [{minutes: 5, by: 7 in/h}]} | 4:15: \"ten\" is not a return period; give whole years"
                        + " with the unit, such as 10 yr",
                "intensity: {10 yr: []} | 4:22: intensity: found a list, wanted rows such as {minutes: 5, by: 6.9 in/h}",
                "intensity: {10 yr: [5]} | 4:23: found \"5\", wanted {minutes: 5, by: 6.9 in/h}",
                "intensity: {10 yr: [{minutes: 5}]} | 4:23: the key by is missing; give the intensity with its unit, such"
                        + " as 6.9 in/h",
                "intensity: {10 yr: [{by: 7 in/h}]} | 4:23: the key minutes is missing; give the duration in minutes,"
                        + " such as 5",
                "intensity: {10 yr: [{minutes: 5 min, by: 7 in/h}]} | 4:33: \"5 min\": \"min\" is not a unit of ratio;"
                        + " give a number alone",
                "intensity: {10 yr: [{minutes: 5, by: 7}]} | 4:40: \"7\" has no unit; give an intensity with in/h or"
                        + " mm/h, such as 6.3 in/h",
                "intensity: {10 yr: [{minutes: 5, by: -7 in/h}]} | 4:40: \"-7 in/h\" is not above zero; give what the"
                        + " table prints",
                "intensity: {10 yr: [{minutes: 0, by: 7 in/h}]} | 4:33: \"0\" is not above zero; give what the table"
                        + " prints",
                "intensity: {10 yr: [{minutes: 5, by: 7 in/h, at: 3}]} | 4:48: unknown key at in a row of intensity."
                        + " Known: minutes, by",
                "intensity: {10 yr: [{minutes: 10, by: 5 in/h}, {minutes: 5, by: 4 in/h}]} | 4:50: the duration is not"
                        + " longer than that of the row before; write the shortest first, each once",
                "intensity: {10 yr: [{minutes: 5, by: 5 in/h}, {minutes: 5, by: 5 in/h}]} | 4:49: the duration is not"
                        + " longer than that of the row before; write the shortest first, each once",
                "intensity: {10 yr: [{minutes: 5, by: 7 in/h}, {minutes: 10, by: 140 mm/h}]} | 4:49: the row before is in"
                        + " in/h, this one in mm/h; write the whole table in one unit",
                "intensity: {10 yr: [{minutes: 5, by: 7 in/h}, {minutes: 10, by: 8 in/h}]} | 4:49: it rains harder than"
                        + " in the shorter row before; check the table, a longer rain is a weaker one",
                "wind: 3 | 4:3: unknown key wind in storm. Known: basis, return_period, shortest_duration, intensity,"
                        + " curve, overland",
                "curve: {10 yr: 5} | 4:18: curve: found \"5\", wanted its form, numbers and unit",
                "curve: {10 yr: {form: a*t, unit: in/h}} | 4:25: \"a*t\" is not a form that is known; write a/(t+b)^c or"
                        + " c/(t^e+f)",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: 8, c: 0.8, unit: cfs, minutes: [5, 60]}} | 4:63: \"cfs\" is"
                        + " not a unit of intensity; use in/h or mm/h",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: 8, c: 0.8, minutes: [5, 60]}} | 4:18: the key unit is"
                        + " missing; give the unit that the formula gives, in/h or mm/h",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: 8, c: 0.8, unit: in/h}} | 4:18: minutes: give the shortest"
                        + " and the longest duration that the formula was fitted to, such as [5, 60]",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: 8, c: 0.8, unit: in/h, minutes: [60, 5]}} | 4:79: minutes:"
                        + " give the shortest and the longest duration that the formula was fitted to, such as [5, 60]",
                "curve: {10 yr: {form: a/(t+b)^c, a: 0, b: 8, c: 0.8, unit: in/h, minutes: [5, 60]}} | 4:39: \"0\" is not"
                        + " above zero; give the number that the formula is printed with",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: -8, c: 0.8, unit: in/h, minutes: [5, 60]}} | 4:46: \"-8\" is"
                        + " negative; give the number that the formula is printed with",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: 8, unit: in/h, minutes: [5, 60]}} | 4:18: the key c is"
                        + " missing; give its number, t in minutes",
                "curve: {10 yr: {form: a/(t+b)^c, a: 50, b: 8, c: 1, e: 1, unit: in/h, minutes: [5, 60]}} | 4:55: unknown"
                        + " key e in curve a/(t+b)^c; did you mean a? Known: form, unit, minutes, a, b, c",
            })
    void whatIsWrongIsRefusedWithItsPlace(String line, String fault) {
        assertThat(faults(line)).containsExactly("rules/counties/c.yaml:" + fault);
    }

    @Test
    void aRarerStormThatRainsLessIsRefused() {
        assertThat(faults("intensity:", "  100 yr: [{minutes: 5, by: 6 in/h}]", "  10 yr: [{minutes: 5, by: 7 in/h}]"))
                .containsExactly(
                        "rules/counties/c.yaml:5:13: the rain of 100 yr is weaker than that of 10 yr of the same"
                                + " duration; check the two");
    }

    @Test
    void aRarerStormIsHeldAgainstAllCommonerOnesNotTheNextAlone() {
        assertThat(faults(
                        "intensity:",
                        "  2 yr: [{minutes: 5, by: 6 in/h}]",
                        "  10 yr: [{minutes: 10, by: 5 in/h}]",
                        "  25 yr: [{minutes: 5, by: 5.9 in/h}]"))
                .containsExactly(
                        "rules/counties/c.yaml:7:12: the rain of 25 yr is weaker than that of 2 yr of the same duration;"
                                + " check the two");
        assertThat(faults(
                        "intensity:",
                        "  2 yr: [{minutes: 5, by: 6 in/h}]",
                        "  10 yr: [{minutes: 10, by: 5 in/h}]",
                        "  25 yr: [{minutes: 5, by: 6 in/h}]"))
                .isEmpty();
    }

    @Test
    void theSameRainTwiceIsRefused() {
        assertThat(faults(
                        "return_period: 10 yr",
                        "intensity: [{minutes: 5, by: 7 in/h}]",
                        "curve: {form: a/(t+b)^c, a: 50, b: 8, c: 0.8, unit: in/h, minutes: [5, 60]}"))
                .containsExactly(
                        "rules/counties/c.yaml:6:10: the rain of 10 yr stands already in line 5; give one of the"
                                + " two");
    }

    @Test
    void aBookStatesItsBasis() {
        assertThat(new Books(folder)
                        .with("counties/c.yaml", "storm: {return_period: 10 yr}\n")
                        .faultsOfCounty())
                .containsExactly("rules/counties/c.yaml:2:8: the key basis is missing; give what the storm rests on");
    }

    @Test
    void aLaterBookChangesSingleKeysAndRainAsAWhole() {
        Books books = new Books(folder)
                .with("baseline.yaml", """
                        storm: {shortest_duration: 10 min, basis: {kind: practice}}
                        """)
                .with("counties/b.yaml", """
                        builds_on: ../baseline.yaml
                        storm:
                          return_period: 10 yr
                          intensity: {10 yr: [{minutes: 5, by: 7 in/h}], 25 yr: [{minutes: 5, by: 8 in/h}]}
                          basis: {kind: practice}
                        """)
                .with("counties/c.yaml", """
                        builds_on: b.yaml
                        storm: {return_period: 25 yr, basis: {kind: practice}}
                        """);
        Storm storm = books.county().locality().storm();

        assertThat(storm.returnPeriod().orElseThrow().setBy().fileAndLine()).isEqualTo("rules/counties/c.yaml:3");
        assertThat(storm.shortestDuration().orElseThrow().setBy().fileAndLine()).isEqualTo("rules/baseline.yaml:2");
        assertThat(DesignStorm.of(storm)
                        .value()
                        .orElseThrow()
                        .rainfall()
                        .setBy()
                        .fileAndLine())
                .isEqualTo("rules/counties/b.yaml:5");
    }

    @Test
    void theShippedCountiesRain() {
        RuleLibrary library = new RuleLibrary(Path.of("rules"), "rules");
        assertThat(library.counties()).allSatisfy(county -> {
            Storm storm = library.load(county, Optional.empty()).locality().storm();
            DesignStorm design = DesignStorm.of(storm).value().orElseThrow();
            Time shortest = design.duration(new Time(1));
            assertThat(design.intensity(shortest).value().orElseThrow().in(Unit.INCH_PER_HOUR))
                    .isBetween(3.0, 12.0);
            assertThat(design.rainfall().basis().orElseThrow()).contains("(invented)");
        });
    }
}
