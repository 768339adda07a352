package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Standing;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;

/** Whatever is measured: a tighter limit never lets pass what a looser one held back. */
class TighteningPropertyTest {

    @Property
    void tighteningNeverTurnsAFailureIntoAPass(
            @ForAll Bound bound,
            @ForAll @DoubleRange(max = 100) double limit,
            @ForAll @DoubleRange(max = 100) double by,
            @ForAll @DoubleRange(min = -50, max = 250) double measured,
            @ForAll @DoubleRange(max = 2) double accuracy) {
        Limit loose = new Limit(bound, Written.of(limit + (bound == Bound.AT_MOST ? by : 0), Unit.FOOT));
        Limit tight = new Limit(bound, Written.of(limit + (bound == Bound.AT_LEAST ? by : 0), Unit.FOOT));
        Length value = Length.feet(measured);

        assertThat(tight.atLeastAsTightAs(loose)).isTrue();
        assertThat(rank(tight.standing(value, accuracy))).isGreaterThanOrEqualTo(rank(loose.standing(value, accuracy)));
    }

    @Property
    void aLimitInOneUnitIsAsTightAsTheSameInAnother(@ForAll @DoubleRange(max = 1000) double inches) {
        Limit inInches = new Limit(Bound.AT_LEAST, Written.of(inches, Unit.INCH));
        Limit inFeet = new Limit(Bound.AT_LEAST, Written.of(inches / 12, Unit.FOOT));

        assertThat(inInches.atLeastAsTightAs(inFeet)).isTrue();
        assertThat(inFeet.atLeastAsTightAs(inInches)).isTrue();
        assertThat(inFeet.value().quantity().dimension()).isEqualTo(Dimension.LENGTH);
    }

    private static int rank(Standing standing) {
        return switch (standing) {
            case MEETS -> 0;
            case BORDERLINE -> 1;
            case FAILS -> 2;
        };
    }
}
