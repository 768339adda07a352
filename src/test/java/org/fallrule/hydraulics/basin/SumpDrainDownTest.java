package org.fallrule.hydraulics.basin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.inchesPerHour;
import static org.fallrule.hydraulics.UsUnits.squareFeet;
import static org.fallrule.hydraulics.UsUnits.squareInches;

import org.fallrule.measure.Area;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Volume;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class SumpDrainDownTest implements MethodContract {
    private static final Area PLAN = squareFeet(1);
    private static final Length SIX_INCHES = Length.inches(6);

    @Override
    public Method method() {
        return SumpDrainDown.METHOD;
    }

    @Override
    public double ours(Given given) {
        return switch (given.what()) {
            case "time through a hole" ->
                given.in(SumpDrainDown.throughHoles(
                        circle(given.length("tank")),
                        given.length("from"),
                        given.length("to"),
                        circle(given.length("hole")),
                        given.number("Cd")));
            case "stone that holds the water" ->
                given.in(SumpDrainDown.stoneHolding(given.volume("water"), given.number("voids")));
            default -> {
                Volume rain = new Volume(
                        given.length("rain").metres() * given.area("roof").squareMetres());
                double stone =
                        SumpDrainDown.stoneHolding(rain, given.number("voids")).cubicMetres();
                yield given.in(new Area(stone / given.length("deep").metres()));
            }
        };
    }

    private static Area circle(Length across) {
        return new Area(Math.PI / 4 * across.metres() * across.metres());
    }

    private static double minutes(DrainDown down) {
        return ((DrainDown.Empties) down).time().in(Unit.MINUTE);
    }

    @Test
    void anExamExamplesAnswerIsOutByItsRoundedRoots() {
        // A practice item for an engineering exam: tank of 4 ft, 6 to 2 ft, 5 sq in, Cd 1, printed 94 s.
        double seconds = SumpDrainDown.throughHoles(
                        squareFeet(Math.PI / 4 * 16), Length.feet(6), Length.feet(2), squareInches(5), 1)
                .seconds();

        assertThat(seconds).isCloseTo(93.4, within(0.1)).isLessThan(93.5);
    }

    /** Made by arithmetic for this test, not published. */
    @Test
    void stoneThatDrainsInThreeDays() {
        Time threeDays = new Time(72 * 3600);

        assertThat(SumpDrainDown.deepestStone(inchesPerHour(0.52), threeDays, 0.4)
                        .in(Unit.INCH))
                .isCloseTo(93.6, within(0.01));
        assertThat(SumpDrainDown.deepestStone(inchesPerHour(0.27), threeDays, 0.4)
                        .in(Unit.INCH))
                .isCloseTo(48.6, within(0.01));
        assertThat(minutes(SumpDrainDown.ofStone(Length.inches(93.6), 0.4, inchesPerHour(0.52))) / 60)
                .isCloseTo(72, within(1e-6));
    }

    /** An Ontario guide (read) prints 19.2 and 38.4 for 48 and 96 h at voids of 0.4: hours times voids, not hours over voids. */
    @Test
    void oneGuidesFactorsAllowALessDepthThanWhatDrains() {
        double inAnHour = 1 / 3600.0;
        double drains = SumpDrainDown.deepestStone(new Intensity(inAnHour), new Time(48 * 3600), 0.4)
                .metres();

        assertThat(drains).isCloseTo(48 / 0.4, within(1e-9)).isGreaterThan(19.2);
        assertThat(48 * 0.4).isCloseTo(19.2, within(1e-9));
        assertThat(96 * 0.4).isCloseTo(38.4, within(1e-9));
    }

    @Test
    void slowSoilSetsTheTimeAndSmallHolesOnlyInFastSoil() {
        Area holes = squareInches(0.8);
        double clay = minutes(SumpDrainDown.of(PLAN, SIX_INCHES, holes, 0.6, squareFeet(4), inchesPerHour(0.02)));
        double open = minutes(SumpDrainDown.of(PLAN, SIX_INCHES, holes, 0.6, squareFeet(4), inchesPerHour(1e5)));

        // In clay the soil alone: 6 in * 1 / 4 at 0.02 in/h = 75 h. In the open the holes alone.
        assertThat(clay / 60).isCloseTo(75, within(0.01));
        assertThat(open)
                .isCloseTo(
                        SumpDrainDown.throughHoles(PLAN, SIX_INCHES, new Length(0), holes, 0.6)
                                .in(Unit.MINUTE),
                        within(1e-9));
    }

    @Test
    void betweenTheTwoTheTimeIsThatOfAStepwiseReckoning() {
        Area holes = squareInches(0.05);
        double a = holes.squareMetres();
        double soil = squareFeet(4).squareMetres() * inchesPerHour(8).metresPerSecond();
        double h = SIX_INCHES.metres();
        double seconds = 0;
        double slice = h / 100_000;
        for (double depth = h - slice / 2; depth > 0; depth -= slice) {
            seconds += PLAN.squareMetres() * slice / Math.min(soil, 0.6 * a * Math.sqrt(2 * 9.80665 * depth));
        }

        assertThat(soil).isLessThan(0.6 * a * Math.sqrt(2 * 9.80665 * h));
        assertThat(minutes(SumpDrainDown.of(PLAN, SIX_INCHES, holes, 0.6, squareFeet(4), inchesPerHour(8))))
                .isCloseTo(seconds / 60, within(seconds / 60 * 2e-3));
    }

    @Test
    void aSumpWithoutHolesOrInSoilThatTakesNothingHoldsItsWater() {
        Area none = new Area(0);

        assertThat(SumpDrainDown.of(PLAN, SIX_INCHES, none, 0.6, PLAN, inchesPerHour(8)))
                .isEqualTo(new DrainDown.HoldsWater("the sump has no weep holes"));
        assertThat(SumpDrainDown.of(PLAN, SIX_INCHES, PLAN, 0.6, PLAN, inchesPerHour(0)))
                .isEqualTo(new DrainDown.HoldsWater("the soil takes no water"));
        assertThat(SumpDrainDown.ofStone(SIX_INCHES, 0.4, inchesPerHour(0))).isInstanceOf(DrainDown.HoldsWater.class);
        assertThat(minutes(SumpDrainDown.of(PLAN, new Length(0), none, 0.6, PLAN, inchesPerHour(8))))
                .isZero();
    }

    @Test
    void waterThatNeedNotFallNeedsNoTime() {
        assertThat(SumpDrainDown.throughHoles(PLAN, SIX_INCHES, SIX_INCHES, squareInches(1), 0.6)
                        .seconds())
                .isZero();
    }

    @Test
    void impossibleHolesAndRisingWaterAreRefused() {
        assertThatThrownBy(() -> SumpDrainDown.throughHoles(PLAN, new Length(1), new Length(2), PLAN, 0.6))
                .hasMessageContaining("must fall");
        assertThatThrownBy(() -> SumpDrainDown.throughHoles(PLAN, new Length(2), new Length(1), PLAN, 1.2))
                .hasMessageContaining("coefficient");
        assertThatThrownBy(() -> SumpDrainDown.throughHoles(PLAN, new Length(2), new Length(1), PLAN, 0))
                .hasMessageContaining("coefficient");
        assertThatThrownBy(() -> SumpDrainDown.throughHoles(PLAN, new Length(2), new Length(1), new Area(0), 0.6))
                .hasMessageContaining("above zero");
    }
}
