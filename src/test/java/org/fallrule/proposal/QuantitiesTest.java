package org.fallrule.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class QuantitiesTest {
    private static final RuleBook BOOK = SmallLots.book(8);
    private static final Laying LAYING = BOOK.locality().laying();

    private static Quantities of(PlanInFeet plan) {
        SiteAnalysis analysis = SmallLots.analysis(plan, BOOK);
        return Quantities.of(analysis, new Stock(LAYING), new LineRules(analysis, BOOK.rules(), false), LAYING);
    }

    private static PlanInFeet flat() {
        return PlanInFeet.plan().spots("-50 -50 10, 150 -50 10, -50 50 10, 150 50 10");
    }

    /*
     * By hand, feet: 4 in pipe of SDR 35, 4.215 in outside, wall 0.1075 in; trench 4.215 + 2 x 4 = 12.215 in wide, its bottom
     * 0.1075 + 4 = 4.1075 in below the invert. Ground 10.00, inverts 8.00 and 7.00 over 100 ft: 2 + 0.34229 and 3 + 0.34229
     * deep, mean 2.84229; 100 x 1.017917 x 2.84229 = 289.32 cu ft = 10.716 cu yd.
     */
    @Test
    void aTrenchUnderLevelGroundIsAWedge() {
        Quantities take = of(flat().with(
                        Role.PIPE,
                        "P",
                        "LINESTRING (0 0, 100 0)",
                        "diameter = 4 in",
                        "material = pvc_sdr35",
                        "invert_up = 8 ft",
                        "invert_down = 7 ft"));

        assertThat(take.trench().in(Unit.CUBIC_YARD)).isCloseTo(10.716, within(0.001));
        // stone 4.215 + 4 = 8.215 in high less the pipe: 100 x (1.017917 x 0.684583 - 0.096899) = 60.00 cu ft
        assertThat(take.stone().in(Unit.CUBIC_FOOT)).isCloseTo(60.00, within(0.01));
        assertThat(take.spoil().in(Unit.CUBIC_FOOT)).isCloseTo(69.68, within(0.02));
        assertThat(take.pipe())
                .hasSize(1)
                .hasEntrySatisfying(
                        Length.inches(4),
                        length -> assertThat(length.in(Unit.FOOT)).isCloseTo(100, within(1e-6)));
    }

    /*
     * Average end areas, V = L (A1 + A2) / 54 cubic yards with areas in square feet and feet between them: the formula of route
     * surveying handbooks, such as USDA Engineering Field Handbook (NEH part 650), chapter 1 (from memory). Stations 0+00 to
     * 3+00 with 120, 160, 100 and 0 sq ft: 100/54 x (280 + 260 + 100) = 1185.2 cu yd.
     */
    @Test
    void sectionsAreSummedByAverageEndAreas() {
        double squareFoot = Unit.SQUARE_FOOT.toSi();
        double volume = Quantities.averageEndAreas(
                List.of(120 * squareFoot, 160 * squareFoot, 100 * squareFoot, 0.0), 100 * Unit.FOOT.toSi());

        assertThat(volume / Unit.CUBIC_YARD.toSi()).isCloseTo(1185.2, within(0.05));
    }

    @Test
    void bendsWyesAndIncreasersAreCounted() {
        Quantities take = of(flat().with(
                        Role.PIPE,
                        "P1",
                        "LINESTRING (0 10, 10 10, 20 0)",
                        "diameter = 4 in",
                        "material = pvc_sdr35",
                        "invert_up = 8 ft",
                        "invert_down = 7.5 ft")
                .with(
                        Role.PIPE,
                        "P2",
                        "LINESTRING (0 0, 20 0)",
                        "diameter = 4 in",
                        "material = pvc_sdr35",
                        "invert_up = 8 ft",
                        "invert_down = 7.5 ft")
                .with(
                        Role.PIPE,
                        "P3",
                        "LINESTRING (20 0, 60 0)",
                        "diameter = 6 in",
                        "material = pvc_sdr35",
                        "invert_up = 7.5 ft",
                        "invert_down = 7 ft")
                .with(Role.OUTFALL, "OF", "POINT (60 0)"));

        assertThat(take.fittings())
                .containsOnly(Map.entry("45 degree bend", 1), Map.entry("wye", 1), Map.entry("increaser", 1));
    }

    @Test
    void aUtilityUnderThePipeIsACrossing() {
        Quantities take = of(flat().with(
                        Role.PIPE,
                        "P",
                        "LINESTRING (0 0, 100 0)",
                        "diameter = 4 in",
                        "material = pvc_sdr35",
                        "invert_up = 8 ft",
                        "invert_down = 7 ft")
                .with(Role.UTILITY, "E", "LINESTRING (50 -30, 50 30)", "kind = electric", "diameter = 1 in"));

        assertThat(take.crossings()).isEqualTo(1);
    }
}
