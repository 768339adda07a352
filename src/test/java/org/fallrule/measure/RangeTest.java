package org.fallrule.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RangeTest {
    @Test
    void theEndsOfAShareMakeSenseAndNothingBeyondThem() {
        assertThat(Range.SHARE.holds(new Ratio(0))).isTrue();
        assertThat(Range.SHARE.holds(new Ratio(1))).isTrue();
        assertThat(Range.SHARE.holds(new Ratio(1.000001))).isFalse();
        assertThat(Range.SHARE.holds(new Ratio(-0.000001))).isFalse();
    }

    @Test
    void moreThanZeroIsNotZero() {
        assertThat(Range.ABOVE_ZERO.holds(new Length(0))).isFalse();
        assertThat(Range.ABOVE_ZERO.holds(new Length(1e-9))).isTrue();
        assertThat(Range.FROM_ZERO.holds(new Length(0))).isTrue();
    }

    @Test
    void anAngleOfNinetyDegreesIsTheLastUpToIt() {
        Range range = Range.between("0 deg", "90 deg", Dimension.ANGLE);

        assertThat(range.holds(Written.parse("90 deg", Dimension.ANGLE).quantity()))
                .isTrue();
        assertThat(range.holds(Written.parse("90.1 deg", Dimension.ANGLE).quantity()))
                .isFalse();
        assertThat(range.spoken()).isEqualTo("0 deg to 90 deg");
    }

    @Test
    void aLeastMayBeWrittenInAnotherUnit() {
        Range range = Range.from("1 in", Dimension.LENGTH);

        assertThat(range.holds(Length.inches(1))).isTrue();
        assertThat(range.holds(Written.parse("2 cm", Dimension.LENGTH).quantity()))
                .isFalse();
        assertThat(range.spoken()).isEqualTo("1 in or more");
    }
}
