package org.fallrule.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintedTest {

    private static Limit limit(Bound bound, String text, Dimension dimension) {
        return new Limit(bound, Written.parse(text, dimension));
    }

    @ParameterizedTest
    @CsvSource({
        "3.5 ft, FOOT, 3.50 ft",
        "18 in, INCH, 18.0 in",
        "18 in, FOOT, 1.50 ft",
        "1 m, METRE, 1.000 m",
        "12.4 mm, MILLIMETRE, 12 mm",
        "-0.1 mm, MILLIMETRE, 0 mm",
    })
    void aLengthIsPrintedWithTheUsualDigitsOfTheUnit(String length, Unit unit, String shown) {
        assertThat(Printed.of(Written.parse(length, Dimension.LENGTH).quantity(), unit))
                .isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 5 ft, 3.5 ft, 3.50 ft, 1.50 ft",
        "AT_LEAST, 5 ft, 4.996 ft, 4.996 ft, 0.004 ft",
        "AT_LEAST, 5 ft, 4.994999 ft, 4.99 ft, 0.01 ft",
        "AT_LEAST, 1000 mm, 998.6 mm, 999 mm, 1 mm",
        "AT_MOST, 5 ft, 5.004 ft, 5.004 ft, 0.004 ft",
        "AT_MOST, 1 m, 1.25 m, 1.250 m, 0.250 m",
        "AT_LEAST, 12 in, 1 ft_us, 12.0 in, ''",
    })
    void aValueIsPrintedWithDigitsEnoughToShowThatItFails(
            Bound bound, String limit, String measured, String shown, String shortfall) {
        Limit asked = limit(bound, limit, Dimension.LENGTH);
        Quantity value = Written.parse(measured, Dimension.LENGTH).quantity();

        assertThat(Printed.beside(value, asked)).isEqualTo(shown);
        if (!shortfall.isEmpty()) {
            assertThat(Printed.shortfall(value, asked)).isEqualTo(shortfall);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 1.5 m, 1.4992 m, 1.500 m",
        "AT_LEAST, 1000 mm, 999.2 mm, 1000 mm",
        "AT_LEAST, 11.94 in, 11.91 in, 11.94 in",
        "AT_MOST, 1.5 m, 1.5008 m, 1.500 m",
        "AT_LEAST, 1/3 ft, 4 in, 0.333 ft",
    })
    void aValueThatMeetsItsLimitByTheToleranceIsPrintedAsOnTheLimit(
            Bound bound, String limit, String measured, String shown) {
        assertThat(Printed.beside(
                        Written.parse(measured, Dimension.LENGTH).quantity(), limit(bound, limit, Dimension.LENGTH)))
                .isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "1/8 in/ft, 0.0104, 1.04 %, 0.002 %",
        "1/8 in/ft, 0.0059, 0.59 %, 0.45 %",
        "1/8 in/ft, 0.0176, 1.76 %, ''",
        "1/8 in/ft, 0.010416, 1.042 %, ''",
        "1:48, 0.02083, 2.083 %, ''",
        "0 %, -0.00511, -0.51 %, 0.51 %",
        "0 %, -0.00002, -0.002 %, 0.002 %",
    })
    void aSlopeIsPrintedInPercentWhateverTheLimitWasWrittenIn(
            String limit, double slope, String shown, String shortfall) {
        Limit asked = limit(Bound.AT_LEAST, limit, Dimension.SLOPE);

        assertThat(Printed.beside(new Slope(slope), asked)).isEqualTo(shown);
        if (!shortfall.isEmpty()) {
            assertThat(Printed.shortfall(new Slope(slope), asked)).isEqualTo(shortfall);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "5 ft, LENGTH, 5 ft",
        "1 1/2 in, LENGTH, 1 1/2 in",
        "1.00 %, SLOPE, 1.00 %",
        "1/16 in/ft, SLOPE, 1/16 in/ft (0.521 %)",
        "1/8 in/ft, SLOPE, 1/8 in/ft (1.042 %)",
        "1/4 in/ft, SLOPE, 1/4 in/ft (2.083 %)",
        "1:48, SLOPE, 1:48 (2.083 %)",
        "1:50, SLOPE, 1:50 (2.00 %)",
        "0.02 ft/ft, SLOPE, 0.02 ft/ft (2.00 %)",
    })
    void aLimitIsPrintedAsWrittenAndASlopeAlsoInPercent(String text, Dimension dimension, String shown) {
        assertThat(Printed.limit(Written.parse(text, dimension))).isEqualTo(shown);
    }

    @Test
    void anAreaThatFailsByTwoSquareCentimetresShowsItEvenInAcres() {
        Limit limit = limit(Bound.AT_LEAST, "1 acre", Dimension.AREA);
        Area area = new Area(4046.8564224 - 2e-4);

        assertThat(limit.standing(area, 0)).isEqualTo(Standing.FAILS);
        assertThat(Printed.beside(area, limit)).isEqualTo("0.99999995 acre");
        assertThat(Printed.shortfall(area, limit)).isEqualTo("0.00000005 acre");
    }

    @Test
    void numbersAreTrimmedOfTrailingZeros() {
        assertThat(List.of(Printed.trimmed(5), Printed.trimmed(0.25), Printed.trimmed(-0.0), Printed.trimmed(1200)))
                .containsExactly("5", "0.25", "0", "1200");
    }

    @ParameterizedTest
    @CsvSource({
        "10 ft, 10 ft",
        "120 in, 10 ft",
        "10 ft_us, 10 ft",
        "7.26 ft, 7.26 ft",
        "9.999 ft, 10 ft",
        "9.99 ft, 9.99 ft",
        "10.01 ft, 10.01 ft",
        "0 ft, 0 ft",
        "-2 ft, -2 ft",
        "0.5 ft, 0.50 ft"
    })
    void wholeFeetArePrintedWithoutDigits(String length, String shown) {
        assertThat(Printed.feet(
                        Written.parse(length, Dimension.LENGTH).quantity().si()))
                .isEqualTo(shown);
    }

    /** A limit as somebody may write it, and a value near it, often within a few millimetres. */
    private record Case(Limit limit, Quantity measured) {}

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<String> numbers = Arbitraries.oneOf(
                Arbitraries.bigDecimals()
                        .between(BigDecimal.ZERO, new BigDecimal(500))
                        .ofScale(3)
                        .map(BigDecimal::toPlainString),
                Arbitraries.integers().between(0, 400).map(sixteenths -> sixteenths + "/16"),
                Arbitraries.integers().between(0, 300).map(String::valueOf));
        Arbitrary<Unit> units = Arbitraries.of(Unit.values());
        Arbitrary<Double> away = Arbitraries.oneOf(
                Arbitraries.doubles().between(-3, 3),
                Arbitraries.doubles().between(-1000, 1000),
                Arbitraries.just(0.0));
        return Combinators.combine(Arbitraries.of(Bound.values()), numbers, units, away)
                .as((bound, number, unit, tolerances) -> {
                    Limit limit = limit(bound, number + " " + unit.symbol(), unit.dimension());
                    double si = limit.value().quantity().si()
                            + tolerances * unit.dimension().tolerance();
                    return new Case(limit, unit.dimension().of(si));
                });
    }

    private static BigDecimal number(String shown) {
        return new BigDecimal(shown.split(" ", 2)[0]);
    }

    /** The number that a reader of the limit's print compares with. */
    private static BigDecimal askedNumber(Limit limit) {
        String shown = Printed.limit(limit.value());
        if (shown.contains("(")) {
            return number(shown.substring(shown.indexOf('(') + 1));
        }
        String text = shown.split(" ", 2)[0];
        int slash = text.indexOf('/');
        return slash < 0
                ? new BigDecimal(text)
                : new BigDecimal(text.substring(0, slash)).divide(new BigDecimal(text.substring(slash + 1)));
    }

    @Property(tries = 20_000)
    void thePrintedNumbersNeverContradictTheOutcome(@ForAll("cases") Case each) {
        boolean fails = each.limit().standing(each.measured(), 0) == Standing.FAILS;
        int order = number(Printed.beside(each.measured(), each.limit())).compareTo(askedNumber(each.limit()));
        boolean looksFailing = each.limit().bound() == Bound.AT_LEAST ? order < 0 : order > 0;

        assertThat(looksFailing)
                .as(
                        "%s against %s %s, %s",
                        Printed.beside(each.measured(), each.limit()),
                        each.limit().bound().words(),
                        Printed.limit(each.limit().value()),
                        fails ? "fails" : "meets")
                .isEqualTo(fails);
    }

    @Property(tries = 20_000)
    void aShortfallIsNeverPrintedAsZero(@ForAll("cases") Case each) {
        if (each.limit().standing(each.measured(), 0) == Standing.FAILS) {
            assertThat(number(Printed.shortfall(each.measured(), each.limit()))).isPositive();
        }
    }

    @Property(tries = 20_000)
    void aNumberIsRoundedHalfUpByItsShortestDecimalForm(
            @ForAll @DoubleRange(min = -1e7, max = 1e7) double number,
            @ForAll @IntRange(max = 7) int decimals,
            @ForAll boolean isNearHalf) {
        double near = isNearHalf ? (Math.floor(number) + 0.5) * Math.pow(10, -decimals) : number;

        assertThat(Printed.rounded(near, decimals))
                .isEqualTo(BigDecimal.valueOf(near).setScale(decimals, RoundingMode.HALF_UP));
    }

    @Test
    void onAMetricPlanTheLimitIsReadInBothUnits() {
        Limit limit = new Limit(Bound.AT_LEAST, Written.parse("5 ft", Dimension.LENGTH));

        assertThat(Printed.limit(limit.value(), true)).isEqualTo("5 ft (1.524 m)");
        assertThat(Printed.beside(Length.feet(4.996), limit, true)).isEqualTo("1.523 m");
        assertThat(Printed.shortfall(Length.feet(4), limit, true)).isEqualTo("0.305 m");
        assertThat(Printed.limit(Written.parse("6 mm", Dimension.LENGTH), true)).isEqualTo("6 mm");
        assertThat(Printed.limit(Written.parse("1/8 in/ft", Dimension.SLOPE), true))
                .isEqualTo("1/8 in/ft (1.042 %)");
    }
}
