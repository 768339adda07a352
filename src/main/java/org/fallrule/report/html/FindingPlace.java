package org.fallrule.report.html;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.report.map.FeatureName;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * What a finding is about and where it lies, for the page to light up.
 *
 * @param features what it is about and what that was measured against, by {@link FeatureName}, one to a line
 * @param onPlan path data in metres of the local frame, y up; empty when it does not lie anywhere
 * @param onSections the stretches of long sections that it lies on, as {@link Stretch} writes them, with spaces between
 */
public record FindingPlace(String features, String onPlan, String onSections) {
    /** How far in metres a lit line may stray from what was measured: less than the width that it is drawn with. */
    private static final double COARSE = 0.05;

    static FindingPlace of(Finding finding, List<Stretch> stretches) {
        Observation seen = finding.observation();
        String features = Stream.of(seen.subject(), seen.other())
                .flatMap(Optional::stream)
                .map(FeatureName::of)
                .distinct()
                .collect(Collectors.joining("\n"));
        String onPlan = seen.where().map(FindingPlace::path).orElse("");
        return new FindingPlace(
                features, onPlan, stretches.stream().map(Stretch::written).collect(Collectors.joining(" ")));
    }

    private static String path(Geometry where) {
        StringBuilder data = new StringBuilder();
        for (int i = 0; i < where.getNumGeometries(); i++) {
            Geometry part = where.getGeometryN(i);
            if (part.getDimension() == 2) {
                part(part.getBoundary(), "Z", data);
            } else {
                part(part, "", data);
            }
        }
        return data.toString();
    }

    private static void part(Geometry lines, String close, StringBuilder data) {
        Geometry simple = DouglasPeuckerSimplifier.simplify(lines, COARSE);
        Geometry drawn = simple.isEmpty() ? lines : simple;
        for (int i = 0; i < drawn.getNumGeometries(); i++) {
            run(drawn.getGeometryN(i).getCoordinates(), data);
            data.append(close);
        }
    }

    /** A point is a line without length, which a round pen draws as a dot. */
    private static void run(Coordinate[] places, StringBuilder data) {
        for (int i = 0; i < places.length; i++) {
            data.append(i == 0 ? 'M' : 'L').append(String.format(Locale.ROOT, "%.2f %.2f", places[i].x, places[i].y));
        }
        if (places.length == 1) {
            data.append("h0");
        }
    }
}
