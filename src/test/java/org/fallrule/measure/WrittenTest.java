package org.fallrule.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "5 ft          | 1.524",
                "5'            | 1.524",
                "18 in         | 0.4572",
                "18in          | 0.4572",
                "18\"          | 0.4572",
                "1 1/2 in      | 0.0381",
                "-1 1/2 in     | -0.0381",
                "-0 1/2 in     | -0.0127",
                "3/4 in        | 0.01905",
                "2.5 in        | 0.0635",
                ".5 in         | 0.0127",
                "5. ft         | 1.524",
                "-2 ft         | -0.6096",
                "+2 FT         | 0.6096",
                "1e1 feet      | 3.048",
                "3 m           | 3",
                "3 metres      | 3",
                "12 cm         | 0.12",
                "150 mm        | 0.15",
                "3937 ft_us    | 1200",
                "3937 us-ft    | 1200",
            })
    void aLengthIsReadInEveryUnitThatTheTradeWrites(String text, double metres) {
        assertThat(Written.parse(text, Dimension.LENGTH).quantity().si()).isCloseTo(metres, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "612.40 ft   | ELEVATION | 186.65952",
                "200 m       | ELEVATION | 200",
                "3937 ft_us  | ELEVATION | 1200",
                "1 %         | SLOPE     | 0.01",
                "0.5%        | SLOPE     | 0.005",
                "2 percent   | SLOPE     | 0.02",
                "1/8 in/ft   | SLOPE     | 0.010416666666666667",
                "1:48        | SLOPE     | 0.020833333333333333",
                "1 : 50      | SLOPE     | 0.02",
                "0.02 ft/ft  | SLOPE     | 0.02",
                "10 mm/m     | SLOPE     | 0.01",
                "1200 sq ft  | AREA      | 111.483648",
                "1 cfs       | FLOW      | 0.028316846592",
                "1 gpm       | FLOW      | 6.30901964e-5",
                "2 l/s       | FLOW      | 0.002",
                "10 ft/s     | VELOCITY  | 3.048",
                "1 in/h      | INTENSITY | 7.0555555556e-6",
                "36 mm/h     | INTENSITY | 1e-5",
                "5 min       | TIME      | 300",
                "2 h         | TIME      | 7200",
                "1 cu ft     | VOLUME    | 0.028316846592",
                "1 gal       | VOLUME    | 0.003785411784",
                "0.85        | RATIO     | 0.85",
                "1200  sq  ft| AREA      | 111.483648",
                "2 m2        | AREA      | 2",
                "1 acre      | AREA      | 4046.8564224",
                "180 deg     | ANGLE     | 3.141592653589793",
            })
    void everyOtherDimensionIsReadInItsUnits(String text, Dimension dimension, double si) {
        Written written = Written.parse(text, dimension);

        assertThat(written.quantity().si()).isCloseTo(si, within(1e-9));
        assertThat(written.quantity().dimension()).isEqualTo(dimension);
    }

    @ParameterizedTest
    @CsvSource({"AREA, an area", "ELEVATION, an elevation", "INTENSITY, an intensity", "SLOPE, a slope", "TIME, a time"
    })
    void anErrorNamesWhatWasWantedAsOneSaysIt(Dimension dimension, String named) {
        assertThatThrownBy(() -> Written.parse("much", dimension))
                .hasMessageContaining("is not a number; give " + named + " such as " + dimension.example());
    }

    @Test
    void blanksAreTidiedAndTheAuthorsTextIsKept() {
        assertThat(Written.parse("  1\t1/2   in ", Dimension.LENGTH).text()).isEqualTo("1 1/2 in");
        assertThat(Written.parse("5\u00a0ft", Dimension.LENGTH).text()).isEqualTo("5 ft");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5            | \"5\" has no unit; give a length with m, cm, mm, ft, ft_us or in, such as 18 in",
                "1/8          | \"1/8\" has no unit; give a length with m, cm, mm, ft, ft_us or in, such as 18 in",
                "5 furlong    | \"5 furlong\": \"furlong\" is not a unit of length; use m, cm, mm, ft, ft_us or in",
                "5 %          | \"5 %\": \"%\" is not a unit of length; use m, cm, mm, ft, ft_us or in",
                "5 ft 6 in    | \"5 ft 6 in\": \"ft 6 in\" is not a unit of length; use m, cm, mm, ft, ft_us or in",
                "5'6\"         | \"5'6\"\" is not read as feet and inches; give one number with its unit: 5 ft 6 in is 5.5 ft or 66 in",
                "1:48         | \"1:48\": \":48\" is not a unit of length; use m, cm, mm, ft, ft_us or in",
                "five feet    | \"five feet\" is not a number; give a length such as 18 in",
                "''           | \"\" is not a number; give a length such as 18 in",
                "' '          | \" \" is not a number; give a length such as 18 in",
                "ft           | \"ft\" is not a number; give a length such as 18 in",
                "NaN ft       | \"NaN ft\" is not a number; give a length such as 18 in",
                "1/0 in       | \"1/0 in\" is not a number; give a length such as 18 in",
                "1 1/0 in     | \"1 1/0 in\" is not a number; give a length such as 18 in",
                "5 2 in       | \"5 2 in\" is not a number; give a length such as 18 in",
                "1 -1/2 in    | \"1 -1/2 in\" is not a number; give a length such as 18 in",
                "1 1.5/2 in   | \"1 1.5/2 in\" is not a number; give a length such as 18 in",
                "1e400 ft     | \"1e400 ft\" is too great for a length on a lot; give one such as 18 in",
                "1e12 ft      | \"1e12 ft\" is too great for a length on a lot; give one such as 18 in",
            })
    void whatIsNotALengthIsRefusedWithWhatWasFoundAndWhatWasWanted(String text, String says) {
        assertThatThrownBy(() -> Written.parse(text, Dimension.LENGTH))
                .isInstanceOf(UnreadableQuantity.class)
                .hasMessage(says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 in   | SLOPE     | \"1 in\": \"in\" is not a unit of slope; use %, in/ft, ft/ft or mm/m",
                "0.01   | SLOPE     | \"0.01\" has no unit; give a slope with %, in/ft, ft/ft or mm/m, such as 1/8 in/ft or 1 %",
                "1:0    | SLOPE     | \"1:0\" is not a number; give a slope such as 1/8 in/ft or 1 %",
                "612    | ELEVATION | \"612\" has no unit; give an elevation with m, ft or ft_us, such as 612.40 ft",
                "7344 in| ELEVATION | \"7344 in\": \"in\" is not a unit of elevation; use m, ft or ft_us",
                "3 ft   | AREA      | \"3 ft\": \"ft\" is not a unit of area; use m2, sq ft, sq in or acre",
                "3 ft   | ANGLE     | \"3 ft\": \"ft\" is not a unit of angle; use deg",
            })
    void aUnitOfAnotherDimensionIsRefused(String text, Dimension dimension, String says) {
        assertThatThrownBy(() -> Written.parse(text, dimension))
                .isInstanceOf(UnreadableQuantity.class)
                .hasMessage(says);
    }

    @Test
    void aRatioThatFallsMoreThanItRunsIsRefusedBecauseGradersWriteRunToRise() {
        assertThat(Written.parse("1:1", Dimension.SLOPE).quantity()).isEqualTo(new Slope(1));
        assertThatThrownBy(() -> Written.parse("3:1", Dimension.SLOPE))
                .hasMessage(
                        "\"3:1\" falls more than it runs; a ratio is fall to run, such as 1:48, and a steeper slope is"
                                + " written in percent");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1 ", "x", "1\u2028", "\u2028"})
    void aVeryLongTextIsRefusedAtOnceAndNotRepeatedInTheMessage(String part) {
        String text = part.repeat(1_000_000);

        assertThatThrownBy(() -> Written.parse(text, Dimension.LENGTH))
                .isInstanceOf(UnreadableQuantity.class)
                .hasMessageContaining("… is too long for a length; give one such as 18 in")
                .message()
                .hasSizeLessThan(200);
    }

    /** Of IPC table 704.1 and the note below it; the percentages are its fractions of an inch divided by twelve. */
    @ParameterizedTest
    @CsvSource({
        "1/16 in/ft, 0.521",
        "1/8 in/ft, 1.042",
        "1/4 in/ft, 2.083",
        "1:48, 2.083",
        "1/2 in/ft, 4.167",
        "1 in/ft, 8.333",
    })
    void fallInInchesPerFootIsThePublishedPercentage(String text, double percent) {
        assertThat(Written.parse(text, Dimension.SLOPE).quantity().in(Unit.PERCENT))
                .isCloseTo(percent, within(0.0005));
    }

    /** NIST SP 811 (2008), appendix B: foot 3.048 E-01, exact; US survey foot 3.048 006 E-01, that is 1200/3937 m. */
    @Test
    void theTwoFeetHaveTheirPublishedFactors() {
        assertThat(Written.parse("1 ft", Dimension.LENGTH).quantity().si()).isEqualTo(0.3048);
        assertThat(Written.parse("1 ft_us", Dimension.LENGTH).quantity().si()).isCloseTo(0.3048006, within(5e-8));
        assertThat(Unit.SURVEY_FOOT.toSi()).isEqualTo(1200.0 / 3937.0).isGreaterThan(Unit.FOOT.toSi());
        assertThat(Unit.ELEVATION_SURVEY_FOOT.toSi()).isEqualTo(Unit.SURVEY_FOOT.toSi());
    }

    @Test
    void aBareNumberTakesTheUnitStatedElsewhere() {
        assertThat(Written.of(4, Unit.INCH).text()).isEqualTo("4 in");
        assertThat(Written.of(0.25, Unit.FOOT).quantity()).isEqualTo(new Length(0.0762));
    }

    @Test
    void aComputedLimitIsExactlyWhatItsTextSays() {
        Written written = Written.of(1.23456, Unit.FOOT, 2);

        assertThat(written.text()).isEqualTo("1.235 ft");
        assertThat(written.quantity())
                .isEqualTo(Written.parse("1.235 ft", Dimension.LENGTH).quantity());
    }

    @Test
    void aQuantityThatCouldNotBeComputedIsNoQuantity() {
        assertThatThrownBy(() -> new Length(Double.NaN)).hasMessage("a quantity must be a finite number, found NaN");
        assertThatThrownBy(() -> new Slope(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Length(1).in(Unit.PERCENT)).hasMessage("PERCENT does not measure length");
    }

    @Test
    void heightsAndLengthsAddUp() {
        Elevation rim = Elevation.feet(100);

        assertThat(rim.minus(Length.feet(2)).plus(Length.inches(6)).above(rim).in(Unit.FOOT))
                .isCloseTo(-1.5, within(1e-12));
        assertThat(Length.feet(2).minus(Length.inches(24)).metres()).isCloseTo(0, within(1e-12));
        assertThat(Length.feet(2).plus(Length.feet(1)).times(2)).isGreaterThan(Length.inches(71));
    }
}
