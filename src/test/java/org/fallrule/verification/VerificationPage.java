package org.fallrule.verification;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.measure.Written;
import org.fallrule.method.PublishedValue;
import org.fallrule.method.PublishedValues;

/** Figures from outside of the project beside the program's, as one page. */
final class VerificationPage {
    private static final Map<String, List<PublishedValue>> METHODS = PublishedValues.all();
    private static final List<CodeFigure> CODES = CodeFigure.all();
    private static final List<ProjectedPoints> ZONES = ProjectedPoints.all();
    private static final List<GroundReadings> GROUND = GroundReadings.all();

    private final StringBuilder text = new StringBuilder();

    private VerificationPage() {}

    static String write() {
        VerificationPage page = new VerificationPage();
        page.opening();
        page.methods();
        page.codes();
        page.projections();
        page.ground();
        page.geometry();
        return page.text.toString();
    }

    /** How many figures there are. */
    static int figures() {
        return methodFigures().size() + CODES.size() + points() + readings();
    }

    private static List<PublishedValue> methodFigures() {
        return METHODS.values().stream().flatMap(Collection::stream).toList();
    }

    private static int points() {
        return ZONES.stream().mapToInt(ProjectedPoints::points).sum();
    }

    private static int readings() {
        return GROUND.stream().mapToInt(GroundReadings::readings).sum();
    }

    private void opening() {
        text.append("""
                # Verification

                What the program says, beside what others have published or what well-kept libraries compute. Written from the
                figures that the tests hold the program to; edit nothing here. `read` means read in the document itself, `from
                memory` that the document is still to be looked up. Where no figure stands, as for rules of common practice,
                there is no source to hold the program to: the rule says so.

                """);
        table(
                "figures of | how many | known from memory",
                Stream.of(
                        row(
                                "methods of calculation",
                                methodFigures().size(),
                                methodFigures().stream()
                                        .filter(each -> each.known().contains("from memory"))
                                        .count()),
                        row(
                                "codes and standards",
                                CODES.size(),
                                CODES.stream()
                                        .filter(each -> each.known().contains("from memory"))
                                        .count()),
                        row("projections", points(), 0),
                        row("ground", readings(), 0)));
    }

    private void methods() {
        text.append("\n## Methods of calculation\n");
        METHODS.forEach((method, values) -> {
            text.append("\n### [")
                    .append(method)
                    .append("](methods/")
                    .append(method)
                    .append(".md)\n\n");
            table(
                    "source | known | quantity | given | published | ours | difference",
                    values.stream()
                            .map(each -> row(
                                    each.source(),
                                    each.known(),
                                    each.what(),
                                    given(each),
                                    (each.published() + " " + each.unit()).strip(),
                                    each.ours(),
                                    difference(each))));
        });
    }

    private static String given(PublishedValue value) {
        return value.inputs().entrySet().stream()
                .map(input -> input.getKey() + " " + input.getValue())
                .collect(Collectors.joining(", "));
    }

    private static String difference(PublishedValue value) {
        BigDecimal published = new BigDecimal(value.published());
        BigDecimal off = new BigDecimal(value.ours()).subtract(published);
        if (published.signum() == 0) {
            return off.toPlainString();
        }
        return off.multiply(BigDecimal.valueOf(100))
                        .divide(published, MathContext.DECIMAL32)
                        .setScale(2, java.math.RoundingMode.HALF_UP)
                + " %";
    }

    private void codes() {
        text.append("""

                ## Codes and standards

                The figure that a code prints, and what the baseline's rule asks. A county's own book comes before both.

                """);
        table(
                "source | known | figure | published | rule | asks",
                CODES.stream()
                        .map(each -> row(
                                each.source(),
                                each.known(),
                                each.what(),
                                each.published(),
                                each.rule() + ", " + each.key(),
                                asked(each)
                                        + each.differs()
                                                .map(why -> " (" + why + ")")
                                                .orElse(""))));
    }

    private static String asked(CodeFigure figure) {
        return BaselineValues.of(figure.rule(), figure.key()).stream()
                .map(Written::text)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private void projections() {
        text.append("""

                ## Projections

                Places in grid coordinates, turned into longitude and latitude by PROJ 9.1.1 and by this program.

                """);
        table("EPSG | system | places | farthest off", ZONES.stream().map(ProjectedPoints::row));
    }

    private void ground() {
        text.append("""

                ## Ground

                Heights read from open data by GDAL 3.6.2 and by this program. Where the data come from stands in
                `src/test/resources/org/fallrule/terrain/README.md`.

                """);
        table("data | places | held to", GROUND.stream().map(GroundReadings::row));
    }

    private void geometry() {
        text.append("""

                ## Geometry

                Ten thousand random plans, by this program and by esri-geometry-api, which shares no code with what it uses:
                distance from pipe to building, length of pipe inside of an area, places where pipe and utility cross, and the
                roof, drive and lawn in a drainage area agree to a micrometre and to 1e-5 square metres
                (`PlanAgainstSecondGeometryTest`). Distances and lot areas of the sample sites agree with geodesics on the WGS 84
                ellipsoid by GeographicLib to a millionth (`PlanAgainstGeodesicsTest`; Karney, Algorithms for geodesics, Journal of
                Geodesy 87, 2013).
                """);
    }

    static String row(Object... cells) {
        return Stream.of(cells)
                .map(cell -> cell.toString().replace("|", "\\|"))
                .collect(Collectors.joining(" | ", "| ", " |\n"));
    }

    private void table(String heading, Stream<String> rows) {
        List<String> titles = new ArrayList<>(List.of(heading.split(" \\| ", -1)));
        text.append(row(titles.toArray()));
        text.append(row(titles.stream().map(any -> "---").toArray()));
        rows.forEach(text::append);
    }
}
