package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;

/** Three points of each zone, their longitude and latitude computed by PROJ; the files say by which version. */
class CoordinateSystemAgainstProjTest {
    private static final Place WHERE = Place.of("lot.prj");

    record Point(String code, String name, Coordinate grid, Coordinate lonLat) {}

    record Wkt(String code, String flavour, String text) {
        @Override
        public String toString() {
            return code + " " + flavour;
        }
    }

    private static List<String[]> rows(String resource) throws IOException {
        var stream = Objects.requireNonNull(CoordinateSystemAgainstProjTest.class.getResourceAsStream(resource));
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines().skip(2).map(line -> line.split("\t", -1)).toList();
        }
    }

    static List<Point> points() throws IOException {
        return rows("proj-points.tsv").stream()
                .map(cells -> new Point(cells[0], cells[1], position(cells[2], cells[3]), position(cells[4], cells[5])))
                .toList();
    }

    static List<Wkt> texts() throws IOException {
        return rows("proj-wkt.tsv").stream()
                .map(cells -> new Wkt(cells[0], cells[1], cells[2]))
                .toList();
    }

    private static Coordinate position(String x, String y) {
        return new Coordinate(Double.parseDouble(x), Double.parseDouble(y));
    }

    private static void assertWithinMicrometre(CoordinateSystem system, Point point) {
        Coordinate lonLat = system.toLonLat(point.grid(), WHERE);
        Coordinate off = LocalFrame.at(point.lonLat().x, point.lonLat().y).toLocal(lonLat);
        assertThat(Math.hypot(off.x, off.y))
                .as("metres off PROJ at %s of %s", point.grid(), point.name())
                .isLessThan(1e-6);
    }

    @ParameterizedTest
    @MethodSource("points")
    void byCodeEveryPointIsWhereProjHasIt(Point point) {
        CoordinateSystem system = CoordinateSystem.of("EPSG:" + point.code(), WHERE);

        assertThat(system.name()).isEqualTo(point.name());
        assertWithinMicrometre(system, point);
    }

    @ParameterizedTest
    @MethodSource("points")
    void theWayBackLeadsToTheGrid(Point point) {
        CoordinateSystem system = CoordinateSystem.of("EPSG:" + point.code(), WHERE);

        Coordinate back = system.fromLonLat(point.lonLat()).orElseThrow();
        double unit = system.linearUnitToMetre().orElse(111_000);
        assertThat(back.distance(point.grid()) * unit).as("metres off PROJ").isLessThan(1e-6);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void byWellKnownTextEveryPointIsWhereProjHasIt(Wkt wkt) throws IOException {
        Map<String, List<Point>> byCode = points().stream().collect(Collectors.groupingBy(Point::code));
        CoordinateSystem system = CoordinateSystem.of(wkt.text(), WHERE);

        assertThat(byCode.get(wkt.code())).hasSize(3).allSatisfy(point -> assertWithinMicrometre(system, point));
    }

    static Stream<String> feet() {
        return Stream.of(
                "2223 0.3048", "2264 0.30480060960121924", "32119 1.0", "2273 0.3048", "2285 0.30480060960121924");
    }

    @ParameterizedTest
    @MethodSource("feet")
    void theUnitIsToldExactlyAsInternationalFootSurveyFootOrMetre(String codeAndUnit) {
        String[] parts = codeAndUnit.split(" ", 2);
        assertThat(CoordinateSystem.of("EPSG:" + parts[0], WHERE)
                        .linearUnitToMetre()
                        .orElseThrow())
                .isCloseTo(Double.parseDouble(parts[1]), org.assertj.core.data.Offset.offset(1e-15));
    }
}
