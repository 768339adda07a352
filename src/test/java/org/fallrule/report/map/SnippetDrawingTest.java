package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Length;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.fallrule.report.Sentence;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class SnippetDrawingTest {
    private static final Report REPORT = SamplePlan.report();

    private static Finding finding(String rule, String subject, String measure) {
        return REPORT.byNeed().stream()
                .filter(each -> each.rule().equals(rule)
                        && each.observation().subject().orElseThrow().id().equals(subject)
                        && each.observation().measured().orElseThrow().of().startsWith(measure))
                .findFirst()
                .orElseThrow();
    }

    private static Drawing draw(Finding finding) {
        return SnippetDrawing.of(REPORT, finding).orElseThrow();
    }

    private static List<Shape.Dimension> dimensions(Drawing drawing) {
        return drawing.shapes(Shape.Dimension.class).toList();
    }

    @Test
    void aDistanceInPlanIsDimensionedWithTheValueThatTheSentencePrints() {
        List<Finding> inPlan = REPORT.byNeed().stream()
                .filter(each -> each.check().equals("clearance")
                        && each.observation().measured().isPresent())
                .toList();
        assertThat(inPlan)
                .hasSizeGreaterThan(5)
                .allSatisfy(finding -> assertThat(dimensions(draw(finding)))
                        .singleElement()
                        .extracting(Shape.Dimension::text)
                        .isEqualTo(
                                Sentence.shown(finding.observation().measured().orElseThrow())));
    }

    @Test
    void theDimensionOfTwoPipesRunsFromEdgeToEdge() {
        Finding finding = finding("gas-separation", "P-3", "plan distance");
        Shape.Dimension drawn = dimensions(draw(finding)).get(0);
        Measured measured = finding.observation().measured().orElseThrow();
        assertThat(drawn.from().distance(drawn.to())).isCloseTo(measured.value().si(), within(1e-9));
    }

    @Test
    void theBandEndsAtTheLimitFromTheOtherFeature() {
        PlanLimit limit =
                PlanLimit.of(finding("outfall-walk-setback", "OF-1", "plan")).orElseThrow();
        double fiveFeet = Length.feet(5).metres();
        assertThat(limit.limit()).isCloseTo(fiveFeet, within(1e-12));
        assertThat(distances(limit))
                .allSatisfy(distance -> assertThat(Math.min(distance, Math.abs(distance - fiveFeet)))
                        .isLessThan(0.001 * fiveFeet));
    }

    @Test
    void theBandAroundAUtilityBeginsAtItsOutside() {
        PlanLimit limit =
                PlanLimit.of(finding("gas-separation", "P-3", "plan distance")).orElseThrow();
        double oneInch = Length.inches(1).metres();
        assertThat(limit.otherRadius())
                .as("half of the size that the rule takes")
                .isCloseTo(oneInch, within(1e-9));
        double outer = Length.feet(3).metres() + oneInch;
        assertThat(distances(limit))
                .allSatisfy(distance -> assertThat(Math.min(Math.abs(distance - oneInch), Math.abs(distance - outer)))
                        .isLessThan(0.002));
    }

    private static List<Double> distances(PlanLimit limit) {
        Geometry edge = limit.band().getBoundary();
        GeometryFactory points = new GeometryFactory();
        return List.of(edge.getCoordinates()).stream()
                .map(place -> points.createPoint(place).distance(limit.other().geometry()))
                .toList();
    }

    @Test
    void whatIsNotADistanceInPlanIsMarkedWithItsValue() {
        Drawing cover = draw(finding("pipe-cover", "P-2", "cover"));
        assertThat(dimensions(cover)).isEmpty();
        assertThat(cover.layer("limit")).isEmpty();
        assertThat(cover.layer("measured").orElseThrow().shapes())
                .hasSize(2)
                .anySatisfy(shape -> assertThat(shape)
                        .isInstanceOfSatisfying(
                                Shape.Label.class,
                                label -> assertThat(label.text()).isEqualTo("7.6 in")));
    }

    @Test
    void atLeastTwentyFeetAreShownAndAllThatWasMeasured() {
        double twentyFeet = Length.feet(20).metres();
        assertThat(REPORT.byNeed())
                .allSatisfy(finding -> SnippetDrawing.of(REPORT, finding).ifPresent(drawing -> {
                    assertThat(drawing.view().getWidth()).isGreaterThanOrEqualTo(twentyFeet);
                    Geometry where = finding.observation().where().orElseThrow();
                    assertThat(drawing.view().contains(where.getEnvelopeInternal()))
                            .isTrue();
                }));
    }

    @Test
    void aFindingThatLiesNowhereHasNoDrawing() {
        Finding septic = REPORT.byNeed().stream()
                .filter(each -> each.rule().equals("septic-setback"))
                .findFirst()
                .orElseThrow();
        assertThat(SnippetDrawing.of(REPORT, septic)).isEmpty();
    }

    @Test
    void pipesInletsAndOutfallsKeepTheirNames() {
        for (Finding finding : REPORT.byNeed()) {
            SnippetDrawing.of(REPORT, finding).ifPresent(drawing -> {
                List<String> written = new Lettering(drawing, Viewport.of(drawing.view(), 340))
                        .words().stream().map(word -> word.label().text()).toList();
                List<String> wanted = drawing.shapes(Shape.Label.class)
                        .filter(label -> label.rank().compareTo(Shape.Rank.CODE) < 0)
                        .map(Shape.Label::text)
                        .toList();
                assertThat(written).as(Sentence.of(finding)).containsAll(wanted);
            });
        }
    }

    @Test
    void aCutPipeKeepsTheDirectionOfItsFlow() {
        Drawing drawing = draw(finding("outfall-walk-setback", "OF-1", "plan"));
        Shape.Line pipe = drawing.shapes(Shape.Line.class)
                .filter(line -> line.look() == Look.PIPE)
                .findFirst()
                .orElseThrow();
        Coordinate[] places = pipe.path().getCoordinates();
        assertThat(places[places.length - 1].y).isLessThan(places[0].y);
    }
}
