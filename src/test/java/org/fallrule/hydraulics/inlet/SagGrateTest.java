package org.fallrule.hydraulics.inlet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;
import static org.fallrule.hydraulics.UsUnits.squareFeet;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.fallrule.measure.Area;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SagGrateTest implements MethodContract {
    /** One foot square, 45 % open, water from all sides. */
    private static final SagGrate YARD = new SagGrate(Length.feet(4), squareFeet(0.45));

    @Override
    public Method method() {
        return SagGrate.METHOD;
    }

    @Override
    public double ours(Given given) {
        return switch (given.what()) {
            case "flow over the edge" -> given.in(weir(given.length("P")).capture(given.length("d")));
            case "depth" -> given.in(depth(weir(given.length("P")).head(given.flow("Q"))));
            case "perimeter at a curb, clogged" ->
                given.in(atACurb(given, given.number("clogged")).perimeter());
            default ->
                atACurb(given, given.number("clogged")).perimeter().metres()
                        / atACurb(given, 0).perimeter().metres();
        };
    }

    private static SagGrate atACurb(Given given, double clogged) {
        return new RectangularGrate(given.length("long"), given.length("wide"), 0.5, true).clogged(clogged);
    }

    private static SagGrate clogged() {
        return new RectangularGrate(Length.feet(4), Length.feet(2), 0.5, true).clogged(0.5);
    }

    /** So open that only its edge holds the water back. */
    private static SagGrate weir(Length perimeter) {
        return new SagGrate(perimeter, new Area(100));
    }

    private static Length depth(GrateHead head) {
        return ((GrateHead.Standing) head).depth();
    }

    @Test
    void aCloggedHalfLeavesThreeQuartersOfThePerimeterAndHalfTheArea() {
        SagGrate clean = new RectangularGrate(Length.feet(4), Length.feet(2), 0.5, true).clogged(0);

        assertThat(clogged().perimeter().metres() / clean.perimeter().metres()).isCloseTo(0.75, within(1e-12));
        assertThat(clogged().openArea().squareMetres() / clean.openArea().squareMetres())
                .isCloseTo(0.5, within(1e-12));
        assertThat(clean.openArea().in(Unit.SQUARE_FOOT)).isCloseTo(4 * 2 * 0.5, within(1e-12));
    }

    @Test
    void aPrintedDesignDepthIsAChartReadingThatTheFormulaMisses() {
        // HEC-12 reads 0.5 ft for 8 ft3/s on 8 ft off a chart (from memory); its formula gives 0.481 ft.
        assertThat(depth(weir(Length.feet(8)).head(cfs(8))).in(Unit.FOOT)).isCloseTo(0.481, within(0.001));
    }

    @ParameterizedTest // made by arithmetic for this test, not published
    @CsvSource({"1, 0.289, false", "2, 0.816, false", "3, 1.210, true", "6, 1.711, true"})
    void aYardGrateTurnsFromWeirToOrifice(double inches, double cfs, boolean orifice) {
        assertThat(YARD.capture(Length.inches(inches)).in(Unit.CUBIC_FOOT_PER_SECOND))
                .isCloseTo(cfs, within(0.001));
        assertThat(YARD.actsAsOrifice(Length.inches(inches))).isEqualTo(orifice);
    }

    @Test
    void turnsWhereBothAreEqual() {
        assertThat(YARD.turningDepth().in(Unit.INCH)).isCloseTo(2.42, within(0.005));
        double turning = YARD.turningDepth().metres();
        assertThat(YARD.capture(new Length(turning * 0.999999)).cubicMetresPerSecond())
                .isCloseTo(YARD.capture(new Length(turning * 1.000001)).cubicMetresPerSecond(), within(1e-6));
    }

    @Test
    void takesNothingWithoutWaterAndNeedsNoneForNoFlow() {
        assertThat(YARD.capture(new Length(0)).cubicMetresPerSecond()).isZero();
        assertThat(YARD.capture(new Length(-0.1)).cubicMetresPerSecond()).isZero();
        assertThat(depth(YARD.head(new Flow(0))).metres()).isZero();
    }

    @Test
    void aGrateCloggedAllOverTakesNothing() {
        SagGrate shut = new RectangularGrate(Length.feet(1), Length.feet(1), 0.45, false).clogged(1);

        assertThat(shut.head(cfs(0.1))).isEqualTo(new GrateHead.Clogged());
        assertThat(shut.capture(Length.feet(1)).cubicMetresPerSecond()).isZero();
        assertThat(shut.turningDepth().metres()).isZero();
    }

    @Test
    void impossibleGratesAreRefused() {
        assertThatThrownBy(() -> new SagGrate(new Length(-1), new Area(1))).hasMessageContaining("below zero");
        assertThatThrownBy(() -> new RectangularGrate(new Length(0), new Length(1), 0.5, false))
                .hasMessageContaining("above zero");
        assertThatThrownBy(() -> new RectangularGrate(new Length(1), new Length(0), 0.5, false))
                .hasMessageContaining("above zero");
        assertThatThrownBy(() -> new RectangularGrate(new Length(1), new Length(1), 1.5, false))
                .hasMessageContaining("open part");
        assertThatThrownBy(() -> new RectangularGrate(new Length(1), new Length(1), 0, false))
                .hasMessageContaining("open part");
        assertThatThrownBy(() -> new RectangularGrate(new Length(1), new Length(1), 0.5, false).clogged(1.1))
                .hasMessageContaining("from 0 to 1");
    }

    @Test
    void aFrameWithoutBarsIsOpenAllOver() {
        SagGrate frame = new RectangularGrate(Length.feet(2), Length.feet(1), 1, false).clogged(0);

        assertThat(frame.openArea().in(Unit.SQUARE_FOOT)).isCloseTo(2, within(1e-12));
    }

    @Property
    void theHeadOfAFlowLetsThatFlowIn(
            @ForAll @DoubleRange(min = 0.1, max = 10) double perimeter,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 2) double area,
            @ForAll @Scale(6) @DoubleRange(min = 1e-6, max = 1) double flow) {
        SagGrate grate = new SagGrate(new Length(perimeter), new Area(area));

        assertThat(grate.capture(depth(grate.head(new Flow(flow)))).cubicMetresPerSecond())
                .isCloseTo(flow, within(flow * 1e-9));
    }
}
