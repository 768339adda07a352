package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.network.FlowLine;
import org.fallrule.report.map.Drawing;
import org.fallrule.report.map.DrawingLayer;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.SnippetDrawing;
import org.fallrule.report.profile.Section;
import org.fallrule.report.profile.SectionDrawing;
import org.fallrule.report.profile.SectionForm;
import org.fallrule.report.profile.SectionSnippet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * The drawings of sample sites as shapes against those that are expected: what is drawn in which layer, as what, and where to
 * the centimetre. After a wanted change renew them with {@code mvn test -Dtest=ExpectedDrawingsTest -Dfallrule.renew=true}, and
 * read what changed before committing it.
 */
class ExpectedDrawingsTest {
    private static final Path EXPECTED = Path.of("src/test/resources/org/fallrule/report/drawings");
    private static final int TITLE = 60;

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2"})
    void theDrawingsAreTheExpectedOnes(String site) throws IOException {
        Report report = Reports.of(site);
        String now = Stream.of(plan(report), sections(report), findings(report))
                .flatMap(part -> part)
                .map(ExpectedDrawingsTest::told)
                .collect(Collectors.joining("\n"));
        Path expected = EXPECTED.resolve(site + ".txt");
        if (Boolean.getBoolean("fallrule.renew")) {
            Files.createDirectories(EXPECTED);
            Files.writeString(expected, now);
        }
        assertThat(now.lines()).containsExactlyElementsOf(Files.readAllLines(expected));
    }

    private static Stream<Drawing> plan(Report report) {
        return PlanDrawing.of(report, 0.6, 1.0).stream();
    }

    private static Stream<Drawing> sections(Report report) {
        return SectionDrawing.lines(report).stream()
                .flatMap((FlowLine line) -> SectionDrawing.of(report, line, SectionForm.WIDE).stream())
                .map(Section::drawing);
    }

    private static Stream<Drawing> findings(Report report) {
        return report.byNeed().stream()
                .filter(finding -> finding.outcome().isOpen())
                .flatMap(finding -> Stream.of(own(SnippetDrawing.of(report, finding)), profile(report, finding))
                        .flatMap(Optional::stream));
    }

    /** Of a finding's map what it has of its own: the limit and what was measured. */
    private static Optional<Drawing> own(Optional<Drawing> map) {
        return map.map(drawing -> new Drawing(
                drawing.title(),
                drawing.description(),
                drawing.view(),
                drawing.unit(),
                drawing.layers().stream()
                        .filter(layer ->
                                List.of("limit", "measured", "measured_along").contains(layer.name()))
                        .toList()));
    }

    private static Optional<Drawing> profile(Report report, Finding finding) {
        return SectionSnippet.of(report, finding).map(Section::drawing);
    }

    private static String told(Drawing drawing) {
        StringBuilder text = new StringBuilder(drawing.title() + "\n  view " + box(drawing.view()) + ", scale bar in "
                + drawing.unit().name().toLowerCase(Locale.ROOT) + "\n");
        for (DrawingLayer layer : drawing.layers()) {
            text.append("  ").append(layer.name()).append('\n');
            layer.shapes()
                    .forEach(shape -> text.append("    ").append(told(shape)).append('\n'));
        }
        return text.toString();
    }

    private static String told(Shape shape) {
        if (shape instanceof Shape.Area area) {
            return "area " + area.look() + " '" + cut(area.title()) + "' " + told(area.outline());
        } else if (shape instanceof Shape.Line line) {
            return "line " + line.look() + " '" + cut(line.title()) + "' " + told(line.path());
        } else if (shape instanceof Shape.Sign sign) {
            return "sign " + sign.look() + " '" + cut(sign.title()) + "' " + place(sign.place());
        } else if (shape instanceof Shape.Label label) {
            return "label " + label.rank() + " '" + cut(label.text()) + "'" + (label.kept() ? " kept" : "");
        } else if (shape instanceof Shape.Dimension dimension) {
            return "dimension '" + dimension.text() + "' " + place(dimension.from()) + " to " + place(dimension.to());
        }
        Shape.Badge badge = (Shape.Badge) shape;
        return "badge " + badge.number() + " " + badge.outcome() + " " + place(badge.place());
    }

    private static String cut(String words) {
        return words.length() <= TITLE ? words : words.substring(0, TITLE) + "...";
    }

    private static String told(Geometry geometry) {
        return geometry.getNumPoints() + " corners in " + box(geometry.getEnvelopeInternal());
    }

    private static String box(Envelope box) {
        return place(new Coordinate(box.getMinX(), box.getMinY())) + " to "
                + place(new Coordinate(box.getMaxX(), box.getMaxY()));
    }

    /** A centimetre is far finer than any print, and far coarser than what machines round differently. */
    private static String place(Coordinate place) {
        return String.format(Locale.ROOT, "%.2f %.2f", place.x + 0.0, place.y + 0.0)
                .replace("-0.00", "0.00");
    }
}
