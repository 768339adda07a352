package org.fallrule.verification;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.fallrule.document.Place;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.locationtech.jts.geom.Coordinate;

/**
 * Places of one coordinate system that PROJ unprojected.
 *
 * @param code its EPSG code
 * @param name its name
 * @param points how many places
 * @param metresOff how far the program has the worst of them from where PROJ has it
 */
record ProjectedPoints(String code, String name, int points, double metresOff) {

    static List<ProjectedPoints> all() {
        Map<String, List<String[]>> byCode = new LinkedHashMap<>();
        rows().forEach(row ->
                byCode.computeIfAbsent(row[0], any -> new ArrayList<>()).add(row));
        return byCode.entrySet().stream()
                .map(entry -> of(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static ProjectedPoints of(String code, List<String[]> rows) {
        CoordinateSystem system = CoordinateSystem.of("EPSG:" + code, Place.of("points"));
        double worst = rows.stream().mapToDouble(row -> off(system, row)).max().orElseThrow();
        return new ProjectedPoints(code, rows.get(0)[1], rows.size(), worst);
    }

    private static double off(CoordinateSystem system, String[] row) {
        Coordinate lonLat = new Coordinate(Double.parseDouble(row[4]), Double.parseDouble(row[5]));
        Coordinate grid = new Coordinate(Double.parseDouble(row[2]), Double.parseDouble(row[3]));
        Coordinate off = LocalFrame.at(lonLat.x, lonLat.y).toLocal(system.toLonLat(grid, Place.of("points")));
        return Math.hypot(off.x, off.y);
    }

    /** The last digits differ from one Java machine to the next, so that the page gives whole hundredths of a millimetre. */
    String row() {
        String shown = metresOff < 1e-5 ? "less than 0.01 mm" : Math.ceil(metresOff * 1e5) / 100 + " mm";
        return VerificationPage.row(code, name, points, shown);
    }

    private static List<String[]> rows() {
        var stream = Objects.requireNonNull(CoordinateSystem.class.getResourceAsStream("proj-points.tsv"));
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines().skip(2).map(line -> line.split("\t", -1)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
