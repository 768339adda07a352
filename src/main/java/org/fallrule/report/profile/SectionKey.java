package org.fallrule.report.profile;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.TextWidth;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
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

    private static final Set<Look> OF_DRAIN =
            EnumSet.of(Look.GROUND_LINE, Look.INVERT, Look.PIPE_WALL, Look.STRUCTURE, Look.COVER_LIMIT);

    private final Canvas canvas;
    private final List<Look> looks;
    private final int columns;
    private final double width;

    /** The key of a section without what another explains. */
    SectionKey(Canvas canvas, Section section, Set<Look> explained) {
        this.canvas = canvas;
        this.width = section.form().width();
        Set<Look> shown = EnumSet.noneOf(Look.class);
        section.drawing().shapes(Shape.Area.class).forEach(area -> shown.add(area.look()));
        section.drawing().shapes(Shape.Line.class).forEach(path -> shown.add(path.look()));
        this.looks = shown.stream()
                .filter(look -> !explained.contains(look))
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

    /** Whether it is part of the drain or the ground over it, which every long section shows. */
    static boolean isOfDrain(Look look) {
        return OF_DRAIN.contains(look);
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
            words("m-legend s-text", words(looks.get(i)), x + SWATCH + 8, y + 4);
        }
    }

    private void words(String style, String words, double x, double y) {
        canvas.text(style, words, new Coordinate(x, y), Canvas.Anchor.START);
    }

    private void swatch(Look look, double x, double y) {
        if (isUtility(look)) {
            canvas.circle(look.cssClass() + " s-xing", new Coordinate(x + 7, y), 5);
            words("m-code " + look.cssClass() + "-code", look.ink().code(), x + 15, y + 4);
        } else if (look == Look.LIMIT) {
            canvas.area(look, new GeometryFactory().toGeometry(new Envelope(x, x + SWATCH, y - 6, y + 6)));
        } else if (BOXES.contains(look)) {
            canvas.box(SectionPlot.style(look), new Coordinate(x, y - 6), SWATCH, 12);
        } else {
            String data = "M" + Svg.number(x) + " " + Svg.number(y) + "h" + Svg.number(SWATCH);
            canvas.path(look.cssClass(), data);
            if (look == Look.GROUND_LINE) {
                Geometry line = new GeometryFactory()
                        .createLineString(new Coordinate[] {new Coordinate(x - 10, y), new Coordinate(x + SWATCH, y)});
                canvas.path(look.cssClass() + " s-earth", EarthMarks.along(line));
            }
        }
    }
}
