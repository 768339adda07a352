package org.fallrule.report.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.List;
import org.fallrule.check.Baseline;
import org.fallrule.check.PlanInFeet;
import org.fallrule.locality.Locality;
import org.fallrule.measure.Unit;
import org.fallrule.network.FlowLine;
import org.fallrule.network.PipeRun;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.review.Review;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

class SectionDrawingTest {
    private static final double FOOT = 0.3048;
    private static final String FLAT = "-20 -20 10, 120 -20 10, 120 20 10, -20 20 10";

    private static PlanInFeet pipe(String line, String... attributes) {
        return plan().with(Role.PIPE, "P-1", line, attributes)
                .with(Role.OUTFALL, "OF-1", "POINT (10 0)")
                .empty(Role.DRIVE)
                .empty(Role.WALK);
    }

    /** Ten feet long, one foot of fall. */
    private static PlanInFeet tenFeet() {
        return pipe(
                "LINESTRING (0 0, 10 0)",
                "diameter = 4 in",
                "outside_diameter = 6 in",
                "invert_up = 7 ft",
                "invert_down = 6 ft");
    }

    private static Report report(PlanInFeet plan) {
        Locality locality = Locality.UNSAID;
        RuleBook book = new RuleBook(List.of(), locality, List.of());
        return new Report(plan.analysis(), "none", book, new Review(List.of(), List.of()));
    }

    private static Section section(Report report, int number) {
        FlowLine line = SectionDrawing.lines(report).get(number);
        return SectionDrawing.of(report, line, SectionForm.WIDE).orElseThrow();
    }

    private static Section section(PlanInFeet plan) {
        return section(report(plan), 0);
    }

    private static List<Geometry> lines(Section section, Look look) {
        return section.drawing()
                .shapes(Shape.Line.class)
                .filter(line -> line.look() == look)
                .map(Shape.Line::path)
                .toList();
    }

    private static List<Shape.Area> areas(Section section, Look look) {
        return section.drawing()
                .shapes(Shape.Area.class)
                .filter(area -> area.look() == look)
                .toList();
    }

    @Test
    void aRunOfTenFeetAndADropOfOneFootMeasureRight() {
        Section section = section(tenFeet().spots(FLAT));
        Envelope invert = lines(section, Look.INVERT).get(0).getEnvelopeInternal();
        assertThat(invert.getWidth()).isCloseTo(10 * FOOT, within(1e-9));
        assertThat(invert.getHeight()).isCloseTo(FOOT * section.scale().exaggeration(), within(1e-9));
    }

    @Test
    void theExaggerationThatIsStatedIsTheOneThatIsDrawn() {
        Section section =
                section(pipe("LINESTRING (-80 0, 10 0)", "diameter = 4 in", "invert_up = 7 ft", "invert_down = 6 ft")
                        .spots(FLAT));
        Envelope ground = lines(section, Look.GROUND_LINE).get(0).getEnvelopeInternal();
        double drawn = ground.getMinY() / (10 * FOOT);
        assertThat(drawn).isCloseTo(section.scale().exaggeration(), within(1e-9));
        assertThat(section.scale().exaggeration()).isGreaterThan(1);
        assertThat(section.scale().words()).contains("drawn " + section.scale().exaggeration() + " times");
        assertThat(section.drawing().description()).contains(section.scale().words());
    }

    @ParameterizedTest
    @CsvSource({"100, 0.5", "100, 2", "100, 5", "30, 8", "6, 12", "1000, 3"})
    void theExaggerationIsRoundAndTheDrawingFits(double length, double range) {
        SectionScale scale = SectionScale.fitting(length * FOOT, range * FOOT, SectionForm.WIDE);
        assertThat(scale.exaggeration()).isIn(1, 2, 5, 10, 20);
        assertThat(length * FOOT * scale.pxPerMetre()).isLessThanOrEqualTo(SectionForm.WIDE.plotWidth() + 1e-9);
        assertThat(range * FOOT * scale.exaggeration() * scale.pxPerMetre())
                .isLessThanOrEqualTo(SectionForm.WIDE.greatestHeight() + 1e-9);
    }

    @Test
    void theOutsideOfThePipeIsDrawnToScaleAroundItsInvert() {
        Section section = section(tenFeet().spots(FLAT));
        Envelope wall = areas(section, Look.PIPE_WALL).get(0).outline().getEnvelopeInternal();
        // wall 1 in: from invert - 1 in at the lower end to invert - 1 in + 6 in at the upper
        double scale = section.scale().exaggeration() * FOOT;
        assertThat(wall.getMinY()).isCloseTo((6 - 1 / 12.0) * scale, within(1e-9));
        assertThat(wall.getMaxY()).isCloseTo((7 + 5 / 12.0) * scale, within(1e-9));
    }

    @Test
    void theGroundIsBrokenWhereItIsNotKnownAndThatIsSaid() {
        Section section = section(tenFeet().spots("-5 -5 10, 4 -5 10, 4 5 10, -5 5 10"));
        assertThat(lines(section, Look.GROUND_LINE)).hasSize(1);
        assertThat(lines(section, Look.GROUND_LINE).get(0).getEnvelopeInternal().getMaxX())
                .isCloseTo(4 * FOOT, within(1e-6));
        assertThat(section.notes()).contains("The ground is not known from 0+04.0 to 0+10.0.");
    }

    @Test
    void aCrossingStandsAtItsStationAsHighAsItIs() {
        Section section = section(tenFeet()
                .spots(FLAT)
                .with(Role.UTILITY, "G-1", "LINESTRING (4 -9, 4 9)", "kind = gas", "depth = 24 in", "diameter = 6 in"));
        Envelope circle = areas(section, Look.GAS).get(0).outline().getEnvelopeInternal();
        double scale = section.scale().exaggeration() * FOOT;
        assertThat(circle.centre().x).isCloseTo(4 * FOOT, within(1e-9));
        assertThat(circle.getMaxY()).as("its top, 24 in under 10 ft").isCloseTo(8 * scale, within(1e-9));
        assertThat(circle.getHeight()).as("its size").isCloseTo(0.5 * scale, within(1e-9));
    }

    @Test
    void aCrossingOfUnknownDepthIsAnUprightLineWithAQuestion() {
        Section section =
                section(tenFeet().spots(FLAT).with(Role.UTILITY, "G-1", "LINESTRING (4 -9, 4 9)", "kind = gas"));
        assertThat(areas(section, Look.GAS)).isEmpty();
        Envelope line = lines(section, Look.GAS).get(0).getEnvelopeInternal();
        assertThat(line.getWidth()).isZero();
        assertThat(line.getMaxY() / FOOT / section.scale().exaggeration()).isCloseTo(10, within(1e-9));
        assertThat(section.notes()).contains("The depth of gas G-1 is not known.");
        assertThat(SectionSvg.inline(section, "s")).contains(">G ?<");
    }

    @Test
    void aDepthThatIsExpectedOfTheKindIsABandMarkedAsNotKnown() {
        Section section = section(tenFeet()
                .spots(FLAT)
                .in(Baseline.locality())
                .with(Role.UTILITY, "G-1", "LINESTRING (4 -9, 4 9)", "kind = gas"));
        double scale = section.scale().exaggeration() * FOOT;
        Envelope band = lines(section, Look.GAS).get(0).getEnvelopeInternal();
        assertThat(band.centre().x).isCloseTo(4 * FOOT, within(1e-9));
        assertThat(band.getMaxY()).as("12 in under 10 ft").isCloseTo(9 * scale, within(1e-9));
        assertThat(band.getMinY()).as("36 in under 10 ft").isCloseTo(7 * scale, within(1e-9));
        assertThat(section.notes())
                .contains("An upright with two bars: gas G-1, expected 12.0 in to 36.0 in deep, not known.");
        assertThat(SectionSvg.inline(section, "s")).contains(">G ?<");
    }

    @Test
    void missingInvertsAreNamedAndNoPipeIsDrawn() {
        Section section =
                section(pipe("LINESTRING (0 0, 10 0)", "diameter = 4 in").spots(FLAT));
        assertThat(lines(section, Look.INVERT)).isEmpty();
        assertThat(section.notes())
                .contains(
                        "Pipe P-1: the invert at its upstream end is not given.",
                        "Pipe P-1: the invert at its downstream end is not given.");
        assertThat(section.facts().get(0).sentence()).contains("fall ?", "slope ?");
    }

    @Test
    void withoutAnyHeightNothingIsDrawn() {
        Report report = report(pipe("LINESTRING (0 0, 10 0)"));
        assertThat(SectionDrawing.of(report, SectionDrawing.lines(report).get(0), SectionForm.WIDE))
                .isEmpty();
    }

    @Test
    void thePlanHasOneLineFromTheFarthestInletAndOneForEachBranch() {
        List<FlowLine> lines = SectionDrawing.lines(SamplePlan.report());
        assertThat(lines).extracting(FlowLine::name).containsExactly("IN-1 to OF-1", "DS-1 to IN-2");
        assertThat(lines.get(0).runs()).extracting(PipeRun::id).containsExactly("P-1", "P-3", "P-4");
        assertThat(lines.get(1).into().map(PipeRun::id)).contains("P-3");
    }

    @Test
    void theLimitOfCoverLiesUnderTheGroundByWhatTheRuleAsks() {
        Section section = section(SamplePlan.report(), 1);
        Geometry limit = lines(section, Look.COVER_LIMIT).get(0);
        Geometry ground = lines(section, Look.GROUND_LINE).get(0);
        double under = (ground.getCoordinates()[0].y - limit.getCoordinates()[0].y)
                / section.scale().exaggeration();
        assertThat(under).as("12 in").isCloseTo(12 * Unit.INCH.toSi(), within(1e-6));
    }

    @Test
    void findingsOfCoverBearTheirNumbersInTheList() {
        Report report = SamplePlan.report();
        List<Integer> numbers = SectionDrawing.lines(report).stream()
                .flatMap(line -> SectionDrawing.of(report, line, SectionForm.WIDE).stream())
                .flatMap(section -> section.drawing().shapes(Shape.Badge.class))
                .map(Shape.Badge::number)
                .toList();
        assertThat(numbers)
                .isNotEmpty()
                .allSatisfy(number ->
                        assertThat(report.byNeed().get(number - 1).check()).isIn("cover", "slope", "separation"));
    }
}
