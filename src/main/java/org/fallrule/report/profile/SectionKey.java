package org.fallrule.report.profile;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.TextWidth;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What the lines, letters and colours of a section mean. */
final class SectionKey {
    private static final double ROW = 19;
    private static final double SWATCH = 34;
    private static final Set<Look> BOXES = EnumSet.of(
            Look.PIPE_WALL,
            Look.STRUCTURE,
            Look.LAWN,
            Look.WALK,
            Look.DRIVE,
            Look.STREET,
            Look.BUILDING,
            Look.SURFACE_UNKNOWN);

    private final Svg svg;
    private final List<Look> looks;
    private final int columns;
    private final double width;

    SectionKey(Svg svg, Section section) {
        this.svg = svg;
        this.width = section.form().width();
        Set<Look> shown = EnumSet.noneOf(Look.class);
        section.drawing().shapes(Shape.Area.class).forEach(area -> shown.add(area.look()));
        section.drawing().shapes(Shape.Line.class).forEach(path -> shown.add(path.look()));
        this.looks = shown.stream()
                .sorted(Comparator.comparing(SectionKey::isUtility))
                .toList();
        double widest = looks.stream()
                .mapToDouble(look -> SWATCH + 22 + TextWidth.of(words(look), Flags.FONT))
                .max()
                .orElse(width);
        this.columns = (int) Math.max(1, Math.min(4, width / widest));
    }

    private static String words(Look look) {
        return isUtility(look) ? look.legend() + ", crossing" : look.legend();
    }

    static boolean isUtility(Look look) {
        return !look.ink().code().isEmpty();
    }

    double height() {
        return ROW * Math.ceil((double) looks.size() / columns) + 6;
    }

    void draw(double top) {
        int rows = (int) Math.ceil((double) looks.size() / columns);
        for (int i = 0; i < looks.size(); i++) {
            int column = i / rows;
            double x = 2 + width / columns * column;
            double y = top + ROW * (i % rows) + ROW / 2;
            swatch(looks.get(i), x, y);
            svg.leaf("text", words(looks.get(i)), "class", "m-legend s-text", "x", x + SWATCH + 8, "y", y + 4);
        }
    }

    private void swatch(Look look, double x, double y) {
        if (isUtility(look)) {
            svg.empty("circle", "class", look.cssClass() + " s-xing", "cx", x + 7, "cy", y, "r", 5);
            svg.leaf(
                    "text", look.ink().code(), "class", "m-code " + look.cssClass() + "-code", "x", x + 15, "y", y + 4);
        } else if (BOXES.contains(look)) {
            svg.empty("rect", "class", look.cssClass(), "x", x, "y", y - 6, "width", SWATCH, "height", 12);
        } else {
            String data = "M" + Svg.number(x) + " " + Svg.number(y) + "h" + Svg.number(SWATCH);
            svg.empty("path", "class", look.cssClass(), "d", data);
            if (look == Look.GROUND_LINE) {
                Geometry line = new GeometryFactory()
                        .createLineString(new Coordinate[] {new Coordinate(x - 10, y), new Coordinate(x + SWATCH, y)});
                svg.empty("path", "class", look.cssClass() + " s-earth", "d", EarthMarks.along(line));
            }
        }
    }
}
