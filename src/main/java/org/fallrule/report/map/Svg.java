package org.fallrule.report.map;

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
            text.append(' ').append(attributes[i]).append("=\"");
            if (attributes[i + 1] instanceof Number number) {
                append(number.doubleValue(), text);
            } else {
                text.append(escaped(attributes[i + 1].toString()));
            }
            text.append('"');
        }
        return text;
    }

    /** A number with one digit after the point, or none where that is zero. */
    public static String number(double value) {
        StringBuilder written = new StringBuilder();
        append(value, written);
        return written.toString();
    }

    private static void append(double value, StringBuilder to) {
        long tenths = Math.round(10 * Math.abs(value));
        if (value < 0 && tenths > 0) {
            to.append('-');
        }
        to.append(tenths / 10);
        if (tenths % 10 > 0) {
            to.append('.').append(tenths % 10);
        }
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
                data.append(data.isEmpty() ? 'M' : 'L');
                append(places[i].x, data);
                data.append(' ');
                append(places[i].y, data);
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
