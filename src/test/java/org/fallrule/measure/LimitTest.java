package org.fallrule.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitTest {

    private static Limit limit(Bound bound, String text, Dimension dimension) {
        return new Limit(bound, Written.parse(text, dimension));
    }

    private static Standing standing(Bound bound, String limit, String measured, double accuracyMetres) {
        return limit(bound, limit, Dimension.LENGTH)
                .standing(Written.parse(measured, Dimension.LENGTH).quantity(), accuracyMetres);
    }

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 5 ft, 4.9 ft, FAILS",
        "AT_LEAST, 5 ft, 1522.9 mm, FAILS",
        "AT_LEAST, 5 ft, 1523.1 mm, MEETS",
        "AT_LEAST, 5 ft, 5 ft, MEETS",
        "AT_LEAST, 5 ft, 60 in, MEETS",
        "AT_LEAST, 5 ft, 1.524 m, MEETS",
        "AT_LEAST, 5 ft, 5.1 ft, MEETS",
        "AT_LEAST, 5 ft, -5 ft, FAILS",
        "AT_LEAST, 0 ft, 0 ft, MEETS",
        "AT_MOST, 5 ft, 5.1 ft, FAILS",
        "AT_MOST, 5 ft, 1525.1 mm, FAILS",
        "AT_MOST, 5 ft, 1524.9 mm, MEETS",
        "AT_MOST, 5 ft, 5 ft, MEETS",
        "AT_MOST, 5 ft, 4.9 ft, MEETS",
        "AT_MOST, 5 ft, -9 ft, MEETS",
    })
    void aValueMissesItsLimitOnlyByMoreThanAMillimetre(Bound bound, String limit, String measured, Standing standing) {
        assertThat(standing(bound, limit, measured, 0)).isEqualTo(standing);
    }

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 969 mm, FAILS",
        "AT_LEAST, 971 mm, BORDERLINE",
        "AT_LEAST, 1000 mm, BORDERLINE",
        "AT_LEAST, 1029 mm, BORDERLINE",
        "AT_LEAST, 1031 mm, MEETS",
        "AT_MOST, 969 mm, MEETS",
        "AT_MOST, 971 mm, BORDERLINE",
        "AT_MOST, 1000 mm, BORDERLINE",
        "AT_MOST, 1029 mm, BORDERLINE",
        "AT_MOST, 1031 mm, FAILS",
    })
    void withAnAccuracyOfThirtyMillimetresTheLimitOfOneMetreIsBorderlineOnBothSides(
            Bound bound, String measured, Standing standing) {
        assertThat(standing(bound, "1 m", measured, 0.030)).isEqualTo(standing);
    }

    @Test
    void anAccuracyFinerThanTheToleranceIsNoAccuracyToSpeakOf() {
        assertThat(standing(Bound.AT_LEAST, "1 m", "1 m", 0.001)).isEqualTo(Standing.MEETS);
    }

    @Test
    void aSlopeMissesItsLimitByMoreThanAThousandthOfAPercent() {
        Limit limit = limit(Bound.AT_LEAST, "1 %", Dimension.SLOPE);

        assertThat(limit.standing(new Slope(0.009989), 0)).isEqualTo(Standing.FAILS);
        assertThat(limit.standing(new Slope(0.009991), 0)).isEqualTo(Standing.MEETS);
        assertThat(limit.standing(new Slope(-0.02), 0)).isEqualTo(Standing.FAILS);
    }

    @Test
    void aPipeLaidAtTheRoundedPercentageOfAnEighthInchFailsIt() {
        Limit limit = limit(Bound.AT_LEAST, "1/8 in/ft", Dimension.SLOPE);

        assertThat(limit.standing(new Slope(0.0104), 0)).isEqualTo(Standing.FAILS);
        assertThat(limit.standing(new Slope(0.01042), 0)).isEqualTo(Standing.MEETS);
    }

    @Test
    void aLengthIsNotHeldAgainstASlope() {
        assertThatThrownBy(() -> limit(Bound.AT_LEAST, "1 %", Dimension.SLOPE).standing(new Length(1), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a length cannot be held against 1 %");
    }

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 12 in, 6 in, true",
        "AT_LEAST, 12 in, 12 in, true",
        "AT_LEAST, 1 ft, 12 in, true",
        "AT_LEAST, 305 mm, 12 in, true",
        "AT_LEAST, 304 mm, 12 in, false",
        "AT_LEAST, 11.99 in, 12 in, false",
        "AT_MOST, 6 in, 12 in, true",
        "AT_MOST, 12 in, 1 ft, true",
        "AT_MOST, 13 in, 12 in, false",
    })
    void oneLimitIsAsTightAsAnother(Bound bound, String one, String other, boolean tight) {
        assertThat(limit(bound, one, Dimension.LENGTH).atLeastAsTightAs(limit(bound, other, Dimension.LENGTH)))
                .isEqualTo(tight);
    }

    @Test
    void limitsOfOppositeBoundsAreNeverAsTightAsEachOther() {
        assertThat(limit(Bound.AT_LEAST, "5 ft", Dimension.LENGTH)
                        .atLeastAsTightAs(limit(Bound.AT_MOST, "5 ft", Dimension.LENGTH)))
                .isFalse();
    }

    /** Every tenth of a millimetre up to a kilometre may be drawn; a fixed seed, so that a failure can be seen again. */
    @Test
    void aValueOnTheLimitMeetsItInWhateverUnitEitherWasWritten() {
        Unit[] units = {Unit.FOOT, Unit.INCH, Unit.METRE, Unit.SURVEY_FOOT};
        Random random = new Random(811);
        for (int i = 0; i < 100_000; i++) {
            double metres = random.nextInt(10_000_000) / 10_000.0;
            Bound bound = random.nextBoolean() ? Bound.AT_LEAST : Bound.AT_MOST;
            Unit asked = units[random.nextInt(units.length)];
            Unit drawn = units[random.nextInt(units.length)];
            Written limit = Written.parse(metres / asked.toSi() + " " + asked.symbol(), Dimension.LENGTH);
            Written value = Written.parse(metres / drawn.toSi() + " " + drawn.symbol(), Dimension.LENGTH);

            assertThat(new Limit(bound, limit).standing(value.quantity(), 0))
                    .as("%s against %s %s", value.text(), bound.words(), limit.text())
                    .isEqualTo(Standing.MEETS);
        }
    }

    @Property
    void whatMeetsALimitMeetsEveryLooserOne(
            @ForAll @DoubleRange(min = -100, max = 100) double value,
            @ForAll @DoubleRange(min = -100, max = 100) double limit,
            @ForAll @DoubleRange(min = 0, max = 100) double looser,
            @ForAll Bound bound) {
        double sign = bound == Bound.AT_LEAST ? -1 : 1;
        Limit tight = new Limit(bound, Written.of(limit, Unit.METRE));
        Limit loose = new Limit(bound, Written.of(limit + sign * looser, Unit.METRE));

        assertThat(tight.atLeastAsTightAs(loose)).isTrue();
        if (tight.standing(new Length(value), 0) == Standing.MEETS) {
            assertThat(loose.shortfall(new Length(value))).isLessThanOrEqualTo(1.001e-3);
        }
    }
}
