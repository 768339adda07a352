package org.fallrule.report.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.finding.Finding;
import org.fallrule.report.Report;
import org.fallrule.report.Reports;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

class SectionSnippetTest {
    private static final Report REPORT = Reports.of("harrow-14");

    /** Checks that measure a height wherever they measure at all, in harrow-14. */
    private static final Set<String> OF_HEIGHT =
            Set.of("cover", "depth", "slope", "fall_available", "frost", "grade_line", "inlet_capture", "ground_fall");

    private static Finding finding(String check, String subject, String value) {
        return REPORT.byNeed().stream()
                .filter(each -> each.check().equals(check))
                .filter(each -> each.observation()
                        .subject()
                        .filter(feature -> feature.id().equals(subject))
                        .isPresent())
                .filter(each -> each.observation()
                        .measured()
                        .filter(measured -> measured.of().contains(value))
                        .isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static Section section(Finding finding) {
        return SectionSnippet.of(REPORT, finding).orElseThrow();
    }

    private static Shape.Dimension dimension(Section section) {
        List<Shape.Dimension> all =
                section.drawing().shapes(Shape.Dimension.class).toList();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private static Optional<Envelope> area(Section section, Look look) {
        return section.drawing()
                .shapes(Shape.Area.class)
                .filter(area -> area.look() == look)
                .map(area -> area.outline().getEnvelopeInternal())
                .findFirst();
    }

    private static List<Coordinate> line(Section section, Look look) {
        return section.drawing()
                .shapes(Shape.Line.class)
                .filter(line -> line.look() == look)
                .findFirst()
                .map(line -> List.of(line.path().getCoordinates()))
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "quillfeather-8", "thistledown-3", "plumb-line-1", "maple-court-2"})
    void whatIsDrawnIsAsLargeAsWhatWasMeasured(String sample) {
        Report report = Reports.of(sample);
        for (Finding finding : report.byNeed()) {
            SectionSnippet.of(report, finding).ifPresent(section -> {
                Shape.Dimension drawn = dimension(section);
                double height = Math.abs(drawn.from().y - drawn.to().y)
                        / section.scale().exaggeration();
                double value = Math.abs(
                        finding.observation().measured().orElseThrow().value().si());
                double length = Math.abs(drawn.from().x - drawn.to().x);
                assertThat(length > 0 ? height / length : height)
                        .as(drawn + " " + finding.check())
                        .isCloseTo(value, within(1e-9));
                assertThat(section.drawing().view().contains(drawn.from())).isTrue();
                assertThat(section.drawing().view().contains(drawn.to())).isTrue();
            });
        }
    }

    @Test
    void everyHeightMeasuredHasItsProfile() {
        assertThat(REPORT.byNeed())
                .filteredOn(finding -> OF_HEIGHT.contains(finding.check())
                        && finding.observation().measured().isPresent())
                .isNotEmpty()
                .allSatisfy(finding ->
                        assertThat(SectionSnippet.of(REPORT, finding)).isPresent());
    }

    @Test
    void whatIsMeasuredInPlanHasNone() {
        assertThat(REPORT.byNeed())
                .filteredOn(finding -> Set.of("clearance", "root_zone", "outside", "capacity", "stated")
                        .contains(finding.check()))
                .isNotEmpty()
                .allSatisfy(finding ->
                        assertThat(SectionSnippet.of(REPORT, finding)).isEmpty());
    }

    @Test
    void coverGoesFromTheGroundToTheTopOfThePipeAndItsLimitLiesDeeperWhereItFails() {
        Finding finding = finding("cover", "P-8", "drive");
        Section section = section(finding);
        Shape.Dimension drawn = dimension(section);
        double station = drawn.from().x;

        assertThat(at(line(section, Look.GROUND_LINE), station)).isCloseTo(drawn.from().y, within(1e-6));
        double limit = at(line(section, Look.COVER_LIMIT), station);
        double asked = (drawn.from().y - limit) / section.scale().exaggeration();
        assertThat(asked).as("24 in under a drive").isCloseTo(24 * 0.0254, within(1e-4));
        assertThat(limit).isLessThan(drawn.to().y);
    }

    /** The height of a line at a station between two of its corners. */
    private static double at(List<Coordinate> line, double station) {
        for (int i = 1; i < line.size(); i++) {
            Coordinate from = line.get(i - 1);
            Coordinate to = line.get(i);
            if (from.x <= station && station <= to.x && to.x > from.x) {
                return from.y + (to.y - from.y) * (station - from.x) / (to.x - from.x);
            }
        }
        throw new IllegalArgumentException("nothing at " + station);
    }

    @Test
    void theRoomAroundAUtilityIsRoundAndReachesIntoThePipeWhereItIsTooNear() {
        Section near = section(finding("separation", "P-9", "height"));
        Section clear = section(finding("separation", "P-4", "height"));

        for (Section section : List.of(near, clear)) {
            Envelope room = area(section, Look.LIMIT).orElseThrow();
            assertThat(section.scale().exaggeration()).isEqualTo(1);
            assertThat(room.getWidth()).isCloseTo(room.getHeight(), within(1e-6));
        }
        assertThat(reachesThePipe(near)).isTrue();
        assertThat(reachesThePipe(clear)).isFalse();
    }

    private static boolean reachesThePipe(Section section) {
        GeometryFactory geometry = new GeometryFactory();
        return section.drawing()
                .shapes(Shape.Area.class)
                .filter(area -> area.look() == Look.PIPE_WALL)
                .anyMatch(pipe -> section.drawing()
                        .shapes(Shape.Area.class)
                        .filter(area -> area.look() == Look.LIMIT)
                        .anyMatch(
                                room -> geometry.createGeometry(room.outline()).intersects(pipe.outline())));
    }

    @Test
    void theSlopeAskedIsDrawnFromTheSameUpperEnd() {
        Section section = section(finding("slope", "P-2", "slope"));
        List<Coordinate> asked = line(section, Look.LEVEL_LIMIT);
        Shape.Dimension drawn = dimension(section);

        assertThat(asked.get(0)).isEqualTo(drawn.from());
        double fall = (asked.get(0).y - asked.get(1).y) / section.scale().exaggeration();
        double limit = REPORT.byNeed().stream()
                .filter(each -> each.check().equals("slope"))
                .flatMap(each -> each.observation().measured().stream())
                .flatMap(measured -> measured.limit().stream())
                .filter(each -> each.value().text().contains("1/8"))
                .findFirst()
                .orElseThrow()
                .value()
                .quantity()
                .si();
        assertThat(fall / (asked.get(1).x - asked.get(0).x)).isCloseTo(limit, within(1e-9));
    }

    @Test
    void theDrawingFitsItsFormAndSaysItsScale() {
        for (Finding finding : REPORT.byNeed()) {
            SectionSnippet.of(REPORT, finding).ifPresent(section -> {
                double px = section.scale().pxPerMetre();
                Envelope view = section.drawing().view();
                assertThat(view.getWidth() * px).isLessThanOrEqualTo(SectionForm.SNIPPET.plotWidth() + 1e-6);
                assertThat(view.getHeight() * px).isLessThanOrEqualTo(SectionForm.SNIPPET.greatestHeight() + 1e-6);
                assertThat(SectionSvg.snippet(section, "p"))
                        .contains(section.scale().exaggeration() == 1 ? "drawn to one scale" : "Vertical exaggeration");
            });
        }
    }

    @Test
    void theLimitIsNamedInWords() {
        Finding finding = finding("cover", "P-8", "drive");
        assertThat(SectionSvg.snippet(section(finding), "p")).contains("at least 24 in", "15.6 in");
    }

    @Test
    void aMetricPlanHasItsAxesInMetres() {
        Report metric = Reports.of("maple-court-2");
        Section section = metric.byNeed().stream()
                .flatMap(finding -> SectionSnippet.of(metric, finding).stream())
                .findFirst()
                .orElseThrow();
        assertThat(SectionSvg.snippet(section, "p")).contains(">m</text>").doesNotContain(">ft</text>");
        String whole = SectionSvg.inline(
                SectionDrawing.of(metric, SectionDrawing.lines(metric).get(0), SectionForm.WIDE)
                        .orElseThrow(),
                "s");
        assertThat(whole)
                .contains(">m</text>", "Heights and stations in metres")
                .doesNotContain(">ft</text>");
    }
}
