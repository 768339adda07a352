package org.fallrule.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.reader.layer.RawFeature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.Puntal;

/**
 * What is kept of a layer that is looked over feature by feature: the first features, and of the others each that shows what none
 * before it did, a value in a column of few values or a value of another form. So a code that comes once in a million features is
 * seen. Of a geometry no more is kept than how it is drawn and its first vertex.
 */
final class LayerSample {
    /** A column with more values than these holds names or numbers, not codes. */
    private static final int MOST_VALUES = 250;

    private static final int MOST_FORMS = 40;
    private static final int LONGEST_FORM = 24;
    private static final GeometryFactory OUTLINES = new GeometryFactory();

    private final int whole;
    private final List<RawFeature> kept = new ArrayList<>();
    private final Map<String, Set<String>> values = new HashMap<>();
    private final Map<String, Set<String>> forms = new HashMap<>();
    private final Envelope extent = new Envelope();
    private long count;

    /** @param whole how many features are kept whatever they show */
    LayerSample(int whole) {
        this.whole = whole;
    }

    void take(RawFeature feature) {
        count++;
        feature.geometry().ifPresent(geometry -> extent.expandToInclude(geometry.getEnvelopeInternal()));
        boolean showsMore = showsMore(feature);
        if (showsMore || kept.size() < whole) {
            kept.add(new RawFeature(feature.label(), feature.geometry().map(LayerSample::outline), feature.columns()));
        }
    }

    /** How many features there were. */
    long count() {
        return count;
    }

    /** The box that all of them lie in. */
    Envelope extent() {
        return extent;
    }

    List<RawFeature> kept() {
        return kept;
    }

    private boolean showsMore(RawFeature feature) {
        boolean more = isNew(forms, "", drawn(feature.geometry()), MOST_FORMS);
        for (Map.Entry<String, Object> column : feature.columns().entrySet()) {
            String text = String.valueOf(column.getValue());
            more |= isNew(values, column.getKey(), text, MOST_VALUES);
            more |= isNew(forms, column.getKey(), form(column.getValue(), text), MOST_FORMS);
        }
        return more;
    }

    private static boolean isNew(Map<String, Set<String>> seen, String column, String value, int most) {
        Set<String> known = seen.computeIfAbsent(column, any -> new HashSet<>());
        return known.size() < most && known.add(value);
    }

    private static String drawn(Optional<Geometry> geometry) {
        return geometry.map(each -> each.getGeometryType()
                        + each.isEmpty()
                        + (each.isEmpty() || Double.isNaN(each.getCoordinate().getZ())))
                .orElse("");
    }

    /** How a value is written: its letters all alike, its digits too. */
    private static String form(Object value, String text) {
        StringBuilder form = new StringBuilder(value.getClass().getSimpleName());
        char last = 0;
        for (int i = 0; i < text.length() && form.length() < LONGEST_FORM; i++) {
            char sign = text.charAt(i);
            char kind = Character.isDigit(sign) ? '9' : Character.isLetter(sign) ? 'a' : sign;
            if (kind != last) {
                form.append(kind);
            }
            last = kind;
        }
        return form.toString();
    }

    private static Geometry outline(Geometry geometry) {
        if (geometry.isEmpty()) {
            return geometry;
        }
        Coordinate first = geometry.getCoordinate().copy();
        if (geometry instanceof Puntal) {
            return OUTLINES.createPoint(first);
        }
        if (geometry instanceof Lineal) {
            return OUTLINES.createLineString(new Coordinate[] {first, first});
        }
        return geometry instanceof Polygonal
                ? OUTLINES.createPolygon(new Coordinate[] {first, first, first, first})
                : OUTLINES.createGeometryCollection();
    }
}
