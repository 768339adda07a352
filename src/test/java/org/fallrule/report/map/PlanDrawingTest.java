package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.Test;

class PlanDrawingTest {
    private static final Report REPORT = SamplePlan.report();

    private static Drawing plan() {
        return PlanDrawing.of(REPORT, 0.6, 1.0).orElseThrow();
    }

    @Test
    void itsLayersAreThoseOfThePlanFromTheGroundUp() {
        assertThat(plan().layers())
                .extracting(DrawingLayer::name)
                .containsExactly(
                        "street",
                        "drive",
                        "walk",
                        "contour",
                        "building",
                        "lot",
                        "utility",
                        "pipe",
                        "tree",
                        "cleanout",
                        "inlet",
                        "outfall",
                        "findings");
    }

    @Test
    void aBadgeBearsTheNumberOfItsFindingInTheList() {
        List<Integer> wanted = IntStream.rangeClosed(1, REPORT.byNeed().size())
                .filter(number -> List.of(Outcome.FAILS, Outcome.BORDERLINE)
                        .contains(REPORT.byNeed().get(number - 1).outcome()))
                .boxed()
                .toList();
        assertThat(plan().shapes(Shape.Badge.class).map(Shape.Badge::number)).containsExactlyElementsOf(wanted);
        assertThat(wanted).hasSizeGreaterThan(3);
    }

    @Test
    void theOwnLotIsDrawnOverItsNeighbours() {
        assertThat(plan().layer("lot").orElseThrow().shapes())
                .filteredOn(Shape.Area.class::isInstance)
                .extracting(shape -> ((Shape.Area) shape).look())
                .endsWith(Look.OWN_LOT)
                .contains(Look.OTHER_LOT);
    }

    @Test
    void aPlanThatHoldsNothingIsNotDrawn() {
        assertThat(PlanDrawing.of(SamplePlan.emptyReport(), 0.6, 1.0)).isEmpty();
    }

    @Test
    void noTwoUtilitiesDifferByColourAlone() {
        List<String> dashesAndCodes = List.of(Look.values()).stream()
                .filter(look -> !look.ink().code().isEmpty())
                .map(look -> look.ink().dash() + " " + look.ink().code())
                .toList();
        assertThat(dashesAndCodes).hasSize(10).doesNotHaveDuplicates();
        assertThat(List.of(Look.values()).stream()
                        .filter(look -> !look.ink().code().isEmpty())
                        .map(look -> look.ink().dash()))
                .doesNotHaveDuplicates();
    }
}
