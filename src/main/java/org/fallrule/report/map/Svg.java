package org.fallrule.report.map;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Writes SVG elements; everything that is not a name is escaped. */
public final class Svg {
    private final StringBuilder text = new StringBuilder();

    /** Opens an element with attributes given as name, value, name, value. */
    public Svg open(String name, Object... attributes) {
        start(name, attributes).append('>');
        return this;
    }

    /** An element without content. */
    public Svg empty(String name, Object... attributes) {
        start(name, attributes).append("/>");
        return this;
    }

    /** An element with text in it. */
    public Svg leaf(String name, String content, Object... attributes) {
        open(name, attributes);
        text.append(escaped(content));
        return close(name);
    }

    public Svg close(String name) {
        text.append("</").append(name).append('>');
        return this;
    }

    private StringBuilder start(String name, Object... attributes) {
        text.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            String written = value instanceof Number number ? number(number.doubleValue()) : value.toString();
            text.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(written))
                    .append('"');
        }
        return text;
    }

    /** A number with one digit after the point, or none where that is zero. */
    public static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Path data of lines and areas in pixels; points nearer than a third of a pixel to the one before are left out. */
    public static String path(Geometry px) {
        StringBuilder data = new StringBuilder();
        if (px.getDimension() == 2) {
            Geometry edges = px.getBoundary();
            for (int i = 0; i < edges.getNumGeometries(); i++) {
                data.append(run(edges.getGeometryN(i).getCoordinates())).append('Z');
            }
            return data.toString();
        }
        for (int i = 0; i < px.getNumGeometries(); i++) {
            data.append(run(px.getGeometryN(i).getCoordinates()));
        }
        return data.toString();
    }

    private static String run(Coordinate[] places) {
        StringBuilder data = new StringBuilder();
        Coordinate last = new Coordinate(Double.NaN, Double.NaN);
        for (int i = 0; i < places.length; i++) {
            boolean isEnd = i == 0 || i == places.length - 1;
            if (isEnd || last.distance(places[i]) > 0.33) {
                data.append(data.isEmpty() ? 'M' : 'L')
                        .append(number(places[i].x))
                        .append(' ')
                        .append(number(places[i].y));
                last = places[i];
            }
        }
        return data.toString();
    }

    private static String escaped(String raw) {
        return PlainText.of(raw)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
