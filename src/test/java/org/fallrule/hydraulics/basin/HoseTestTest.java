package org.fallrule.hydraulics.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.gpm;
import static org.fallrule.hydraulics.UsUnits.inchesPerHour;
import static org.fallrule.hydraulics.UsUnits.pipe;
import static org.fallrule.hydraulics.UsUnits.squareFeet;
import static org.fallrule.hydraulics.UsUnits.squareInches;

import java.util.List;
import org.fallrule.measure.Area;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class HoseTestTest implements MethodContract {
    private static final List<HoseTest.Stretch> WAY =
            List.of(new HoseTest.Stretch(pipe(4, 0.011), new Slope(0.01), Length.feet(60)));

    @Override
    public Method method() {
        return HoseTest.METHOD;
    }

    private static HoseTest.Sump sump(Area holes, double soilSquareFeet, double inchesPerHour) {
        return new HoseTest.Sump(
                squareFeet(1), Length.inches(6), holes, 0.6, squareFeet(soilSquareFeet), inchesPerHour(inchesPerHour));
    }

    @Test
    void aTightSumpFillsAtTheHosesRate() {
        HoseTest test =
                HoseTest.of(gpm(5), sump(new Area(0), 4, 8), WAY).value().orElseThrow();

        // Half a cubic foot is 3.74 gallons; 5 gpm run 0.6 in deep in a 4 in pipe at 1 %, about 1.4 ft/s.
        assertThat(test.filling().in(Unit.MINUTE)).isCloseTo(3.740 / 5, within(0.001));
        assertThat(test.travel().in(Unit.SECOND)).isBetween(30.0, 60.0);
        assertThat(test.untilItRuns().seconds())
                .isCloseTo(test.filling().seconds() + test.travel().seconds(), within(1e-9));
    }

    @Test
    void weepHolesMakeItLater() {
        double tight = untilItRuns(sump(new Area(0), 4, 8));
        double weeping = untilItRuns(sump(squareInches(0.8), 40, 8));

        assertThat(weeping).isGreaterThan(tight * 1.2);
    }

    /** The integral of A dh / (Q - k h^0.5) in closed form, by h = s^2. */
    @Test
    void whereTheHolesAloneSetWhatIsLostTheFillingTimeIsThatOfTheIntegral() {
        HoseTest.Sump sump = sump(squareInches(0.3), 40, 1e5);
        double q = gpm(5).cubicMetresPerSecond();
        double k = 0.6 * squareInches(0.3).squareMetres() * Math.sqrt(2 * 9.80665);
        double root = Math.sqrt(Length.inches(6).metres());
        double seconds = squareFeet(1).squareMetres() * 2 * (q / (k * k) * Math.log(q / (q - k * root)) - root / k);

        assertThat(HoseTest.of(gpm(5), sump, WAY)
                        .value()
                        .orElseThrow()
                        .filling()
                        .seconds())
                .isCloseTo(seconds, within(seconds * 1e-3));
    }

    private static double untilItRuns(HoseTest.Sump sump) {
        return HoseTest.of(gpm(5), sump, WAY)
                .value()
                .orElseThrow()
                .untilItRuns()
                .seconds();
    }

    @Test
    void weepHolesThatTakeAllLeaveTheOutfallDry() {
        assertThat(HoseTest.of(gpm(5), sump(squareInches(3), 100, 8), WAY).why())
                .contains("take all");
        assertThat(HoseTest.of(gpm(0), sump(new Area(0), 4, 8), WAY).value()).isEmpty();
    }

    @Test
    void aPipeThatDoesNotFallOrIsTooSmallHasNoTravelTime() {
        HoseTest.Sump sump = sump(new Area(0), 4, 8);
        HoseTest.Stretch level = new HoseTest.Stretch(pipe(4, 0.011), new Slope(0), Length.feet(10));
        HoseTest.Stretch tiny = new HoseTest.Stretch(pipe(0.5, 0.011), new Slope(0.01), Length.feet(10));

        assertThat(HoseTest.of(gpm(5), sump, List.of(level)).why()).contains("does not fall");
        assertThat(HoseTest.of(gpm(5), sump, List.of(tiny)).why()).contains("too small");
    }

    /** Common practice, without a source: a sump in sand is empty about ten minutes after the hose is shut. */
    @Test
    void aSumpOnABedOfStoneInSandIsEmptyInAboutTenMinutes() {
        DrainDown down = sump(squareInches(0.8), 4, 8).drainDown();

        assertThat(((DrainDown.Empties) down).time().in(Unit.MINUTE)).isBetween(5.0, 15.0);
    }

    @Test
    void aSumpWithoutHolesStaysFullOnceTheHoseIsShut() {
        assertThat(sump(new Area(0), 4, 8).drainDown()).isInstanceOf(DrainDown.HoldsWater.class);
    }
}
