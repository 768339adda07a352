package org.fallrule.report.profile;

import org.fallrule.report.map.Svg;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Groups of short slanted strokes under a line, by which ground is known also without colour. */
final class EarthMarks {
    private static final double SPACING = 46;
    private static final int STROKES = 3;
    private static final double APART = 4;
    private static final double LONG = 5;

    private EarthMarks() {}

    /** Path data of the strokes along a line in pixels. */
    static String along(Geometry line) {
        LengthIndexedLine stations = new LengthIndexedLine(line);
        StringBuilder data = new StringBuilder();
        for (double group = SPACING / 2; group < stations.getEndIndex(); group += SPACING) {
            for (int i = 0; i < STROKES; i++) {
                Coordinate place = stations.extractPoint(group + i * APART);
                data.append('M')
                        .append(Svg.number(place.x))
                        .append(' ')
                        .append(Svg.number(place.y + 1))
                        .append('l')
                        .append(Svg.number(-LONG))
                        .append(' ')
                        .append(Svg.number(LONG));
            }
        }
        return data.toString();
    }
}
