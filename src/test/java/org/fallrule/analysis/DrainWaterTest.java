package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.DRAINAGE_AREA;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.SPOT;
import static org.fallrule.site.Role.WALK;

import java.util.Locale;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.fallrule.locality.Locality;
import org.fallrule.locality.OverlandTime;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Flows by hand from 6 in/h: 7,200 sq ft of hard ground bring 1 ft3/s (7,200 x 0.5 ft/h = 3,600 ft3/h). */
class DrainWaterTest {
    private static final String PVC = "material = pvc_sdr35";

    /** A house of 3,600 sq ft with a downspout at either end, each draining half, whose pipes join in a basin. */
    private static PlanInFeet house() {
        return house("4 in", "6 in", "status = proposed");
    }

    private static PlanInFeet house(String branches, String trunk, String outfall) {
        return plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, 60 0, 60 60, 0 60, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout", "rim = 101 ft")
                .with(INLET, "DS-2", "POINT (60 -1)", "kind = downspout", "rim = 101 ft")
                .with(OUTFALL, "OF-1", "POINT (30 -101)", "kind = daylight", outfall)
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 30 -31 98)", "diameter = " + branches, PVC)
                .with(PIPE, "P-2", "LINESTRING Z (60 -1 99, 30 -31 98)", "diameter = " + branches, PVC)
                .with(PIPE, "P-3", "LINESTRING Z (30 -31 98, 30 -101 97)", "diameter = " + trunk, PVC);
    }

    private static DrainWater water(PlanInFeet plan) {
        return plan.analysis().water();
    }

    private static PipeWater pipe(SiteAnalysis analysis, String id) {
        PipeRun run = analysis.network().runs().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        return analysis.water().in(run);
    }

    private static double cfs(PlanInFeet plan, String pipe) {
        return pipe(plan.analysis(), pipe).flow().value().orElseThrow().flow().in(Unit.CUBIC_FOOT_PER_SECOND);
    }

    private static Feature inlet(SiteAnalysis analysis, String id) {
        return analysis.site().features(INLET).stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRoofRunsOffThroughItsDownspoutsAndFlowsAddUpWherePipesJoin() {
        assertThat(cfs(house(), "P-1")).isCloseTo(0.25, within(1e-9));
        assertThat(cfs(house(), "P-2")).isCloseTo(0.25, within(1e-9));
        assertThat(cfs(house(), "P-3")).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void usAndSiInputsGiveTheSameFlowsAndLevels() {
        SiteAnalysis one = house("4 in", "6 in", "tailwater = 98.2 ft").analysis();
        SiteAnalysis other = house("101.6 mm", "15.24 cm", "tailwater = 29.93136 m")
                .in(Raining.at("152.4 mm/h"))
                .analysis();
        assertThat(pipe(one, "P-3").flow().value().orElseThrow().flow().si())
                .isCloseTo(
                        pipe(other, "P-3").flow().value().orElseThrow().flow().si(), within(1e-9));
        assertThat(level(one, "DS-2")).isCloseTo(level(other, "DS-2"), within(1e-9));
    }

    private static double level(SiteAnalysis analysis, String inlet) {
        return analysis.water()
                .level(analysis.network().junctionOf(inlet(analysis, inlet)).orElseThrow())
                .value()
                .orElseThrow()
                .level()
                .value()
                .orElseThrow()
                .metres();
    }

    @Test
    void aDrainageAreaThatThePlanDrawsCountsBeforeTheRoof() {
        PlanInFeet drawn = house().with(
                        DRAINAGE_AREA,
                        "DA-1",
                        "POLYGON ((0 0, 72 0, 72 100, 0 100, 0 0))",
                        "drains_to = DS-1",
                        "runoff_coefficient = 0.5");
        assertThat(cfs(drawn, "P-1")).isCloseTo(0.5, within(1e-9));
        assertThat(cfs(drawn, "P-3")).isCloseTo(0.75, within(1e-9));
    }

    @Test
    void anAreaThatNamesNoInletDrainsToTheOneThatStandsInIt() {
        PlanInFeet drawn = house().with(
                        DRAINAGE_AREA, "DA-1", "POLYGON ((-72 -100, 0 -100, 0 0, -72 0, -72 -100))", "surface = drive");
        assertThat(cfs(drawn, "P-1")).isCloseTo(1, within(1e-9));
    }

    @Test
    void theSurfacesUnderADrawnAreaMakeItsCoefficientAndRoofsWithDownspoutsAreLeftOut() {
        PlanInFeet drawn = house().absent(WALK)
                .with(DRIVE, "DR-1", "POLYGON ((72 0, 108 0, 108 50, 72 50, 72 0))")
                .with(INLET, "CB-1", "POINT (100 80)", "kind = basin")
                .with(DRAINAGE_AREA, "DA-1", "POLYGON ((36 0, 108 0, 108 100, 36 100, 36 0))", "drains_to = CB-1");
        SiteAnalysis analysis = drawn.analysis();
        InletRunoff runoff =
                analysis.water().runoff(inlet(analysis, "CB-1")).value().orElseThrow();
        // 7,200 sq ft less 24 x 60 of roof that has downspouts; 1,800 of drive, the rest lawn
        assertThat(runoff.runoff().area().in(Unit.SQUARE_FOOT)).isCloseTo(5760, within(1e-6));
        assertThat(runoff.runoff().coefficient().value()).isCloseTo((1800 + 0.25 * 3960) / 5760, within(1e-9));
    }

    @Test
    void theTimeThatAPlanGivesCounts() {
        SiteAnalysis analysis = house().with(
                        DRAINAGE_AREA,
                        "DA-1",
                        "POLYGON ((0 0, 72 0, 72 100, 0 100, 0 0))",
                        "drains_to = DS-1",
                        "runoff_coefficient = 0.5",
                        "concentration_time = 12 min")
                .analysis();
        InletRunoff runoff =
                analysis.water().runoff(inlet(analysis, "DS-1")).value().orElseThrow();
        assertThat(runoff.overland().in(Unit.MINUTE)).isCloseTo(12, within(1e-9));
        assertThat(runoff.timeBy()).isEqualTo("given by drainage area DA-1");
    }

    @Test
    void theTimeOverTheGroundIsThatOfTheFaaFormulaOverTheLongestWay() {
        // a plane that falls 2 % to the west: the basin at its foot gets its water straight down a strip
        SiteAnalysis analysis = plan().in(Raining.SIX_INCHES_AN_HOUR)
                .absent(WALK)
                .absent(DRIVE)
                .with(INLET, "CB-1", "POINT (2 25)", "kind = basin")
                .with(SPOT, "S-1", "POINT Z (0 0 100)")
                .with(SPOT, "S-2", "POINT Z (0 50 100)")
                .with(SPOT, "S-3", "POINT Z (100 0 102)")
                .with(SPOT, "S-4", "POINT Z (100 50 102)")
                .analysis();
        InletRunoff runoff =
                analysis.water().runoff(inlet(analysis, "CB-1")).value().orElseThrow();
        double feet = runoff.farthest().orElseThrow().length().in(Unit.FOOT);
        assertThat(feet).isBetween(95.0, 98.5);
        assertThat(runoff.overland().in(Unit.MINUTE))
                .isCloseTo(1.8 * (1.1 - 0.25) * Math.sqrt(feet) / Math.cbrt(2), within(0.01));
        assertThat(runoff.isCut()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"kirpich, 1.22", "kinematic_wave, 7.48", "sheet_flow, 10.12"})
    void theBookChoosesHowTheTimeOverTheGroundIsReckoned(String method, double minutes) {
        // 100 ft at 2 %, n 0.15, 6 in/h, 3 in in 24 h. Kirpich 0.0078 L^0.77 S^-0.385; kinematic wave
        // 0.933 / 6^0.4 (n L / S^0.5)^0.6; NRCS 0.007 (n L)^0.8 / (P2^0.5 S^0.4) h
        Locality place = Raining.SIX_INCHES_AN_HOUR;
        OverlandTime how = new OverlandTime(
                OverlandTime.By.valueOf(method.toUpperCase(Locale.ROOT)),
                Optional.of(new Ratio(0.15)),
                Optional.of(Length.inches(3)));
        Storm storm = place.storm();
        SiteAnalysis analysis = plan().in(new Locality(
                        place.climate(),
                        new Storm(storm.returnPeriod(), storm.shortestDuration(), storm.rainfall(), Optional.of(how)),
                        place.runoff(),
                        place.markAccuracy(),
                        place.expectedCover()))
                .spots("-10 -10 100, -10 110 100, 110 -10 102.4, 110 110 102.4")
                .with(INLET, "CB-1", "POINT (0 50)", "kind = basin")
                .with(
                        DRAINAGE_AREA,
                        "DA-1",
                        "POLYGON ((0 50, 100 49.99, 100 50.01, 0 50))",
                        "drains_to = CB-1",
                        "surface = lawn")
                .analysis();
        InletRunoff runoff =
                analysis.water().runoff(inlet(analysis, "CB-1")).value().orElseThrow();
        assertThat(runoff.timeBy()).isEqualTo(method);
        assertThat(runoff.overland().in(Unit.MINUTE)).isCloseTo(minutes, within(0.05));
    }

    @Test
    void whereItIsNotKnownWhatRunsOffTheFlowIsNotKnownFromThereDown() {
        PlanInFeet plan = house().with(INLET, "CB-1", "POINT (30 -31)", "kind = basin");
        SiteAnalysis analysis = plan.analysis();
        assertThat(cfs(plan, "P-1")).isCloseTo(0.25, within(1e-9));
        assertThat(pipe(analysis, "P-3").flow().why())
                .isEqualTo("no ground is given that could drain to inlet CB-1; give spot elevations around it, or a"
                        + " drainage_area that drains to it");
    }

    @Test
    void withoutAStormNothingIsKnownAndTheStormIsNamed() {
        SiteAnalysis analysis = house().in(Locality.UNSAID).analysis();
        assertThat(pipe(analysis, "P-1").flow().why())
                .isEqualTo("no return period is stated; give storm: return_period in the rule book or in site.yaml");
    }

    @Test
    void aRunoffCoefficientAboveOneGivesNoFlow() {
        PlanInFeet plan = house().with(
                        DRAINAGE_AREA,
                        "DA-1",
                        "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))",
                        "drains_to = DS-1",
                        "runoff_coefficient = 1.2");
        assertThat(pipe(plan.analysis(), "P-1").flow().why())
                .isEqualTo("a runoff coefficient lies between 0 and 1, found 1.2");
    }

    @Test
    void aPipeOfUnknownMaterialHasNoRoughnessAndNoCapacity() {
        PlanInFeet plan = house().with(PIPE, "P-4", "LINESTRING Z (200 0 99, 230 0 98)", "diameter = 4 in");
        assertThat(pipe(plan.analysis(), "P-4").capacity().why())
                .isEqualTo("neither material nor roughness of pipe P-4 is given");
    }

    @Test
    void aPipeCarriesWhatManningSays() {
        // FHWA HEC-22, equation 7-1 with its constants unrounded: 6 in, n 0.011, 1/70
        double capacity =
                pipe(house().analysis(), "P-3").capacity().value().orElseThrow().in(Unit.CUBIC_FOOT_PER_SECOND);
        assertThat(capacity).isCloseTo(0.4632 / 0.011 * Math.pow(0.5, 8.0 / 3) * Math.sqrt(1 / 70.0), within(1e-3));
    }

    @Test
    void theWaterStandsNoLowerGoingUpstreamAndATailwaterLiftsIt() {
        SiteAnalysis free = house().analysis();
        SiteAnalysis drowned = house("4 in", "6 in", "tailwater = 100 ft").analysis();
        assertThat(level(free, "DS-1"))
                .isGreaterThan(
                        free.network().runs().get(0).invertUp().orElseThrow().metres());
        assertThat(level(drowned, "DS-1")).isGreaterThan(level(free, "DS-1")).isGreaterThan(100 * 0.3048);
    }

    @Test
    void theLidOfAPopUpOutfallHoldsTheWaterUpToTheGround() {
        PlanInFeet popUp = plan().in(Raining.SIX_INCHES_AN_HOUR)
                .with(BUILDING, "B-1", "POLYGON ((0 0, 60 0, 60 60, 0 60, 0 0))")
                .with(INLET, "DS-1", "POINT (0 -1)", "kind = downspout")
                .with(OUTFALL, "OF-1", "POINT (0 -101)", "kind = pop_up")
                .with(PIPE, "P-1", "LINESTRING Z (0 -1 99, 0 -101 97)", "diameter = 6 in", PVC);
        SiteAnalysis unknown = popUp.analysis();
        assertThat(water(popUp)
                        .level(unknown.network()
                                .junctionOf(inlet(unknown, "DS-1"))
                                .orElseThrow())
                        .why())
                .isEqualTo("the level of the lid of outfall OF-1 is not known; give the ground there, or tailwater");
        SiteAnalysis known = popUp.spots("-50 20 101, 50 20 101, -50 -120 98.6, 50 -120 98.6")
                .analysis();
        assertThat(level(known, "DS-1")).isGreaterThan(98.9 * 0.3048);
    }
}
