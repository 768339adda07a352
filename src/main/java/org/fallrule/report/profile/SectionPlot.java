package org.fallrule.report.profile;

import java.util.Locale;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.DimensionLine;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.TextWidth;
import org.fallrule.report.map.Viewport;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** The drawn part of a section with its axes, the flags above it and the figures below. */
final class SectionPlot {
    private static final double AXIS = 20;

    private final Canvas canvas;
    private final Section section;
    private final Viewport viewport;
    private final Flags flags;
    private final double left;
    private final double top;

    SectionPlot(Canvas canvas, Section section) {
        this.canvas = canvas;
        this.section = section;
        Envelope view = section.drawing().view();
        this.viewport = Viewport.of(view, view.getWidth() * section.scale().pxPerMetre());
        this.left = section.form().left();
        this.flags = new Flags(section.stands(), this::x);
        this.top = flags.height();
    }

    double bottom() {
        return top + viewport.height() + AXIS + PipeBand.height(section);
    }

    /** Where the drawn part lies: the x of station zero, pixels to a metre of station, upper edge and height in pixels. */
    String reach() {
        return String.format(Locale.ROOT, "%.2f %.5f %.1f %.1f", x(0), viewport.pxPerMetre(), top, viewport.height());
    }

    /** The sheet's x of a station in metres. */
    private double x(double station) {
        return left + viewport.px(new Coordinate(station, 0)).x;
    }

    /** The sheet's y of a height in the drawing's metres. */
    private double y(double height) {
        return top + viewport.px(new Coordinate(0, height)).y;
    }

    void draw() {
        canvas.box("m-ground", new Coordinate(left, top), viewport.width(), viewport.height());
        SectionAxes axes = new SectionAxes(canvas, section, viewport, new Coordinate(left, top));
        axes.heights();
        axes.stations();
        flags.all().forEach(this::pole);
        shapes();
        new SectionLetters(canvas, section, this::onSheet, sheet()).draw();
        flags.all().forEach(this::flag);
        frame();
        new PipeBand(canvas, section, this::x).draw(top + viewport.height() + AXIS);
    }

    private Envelope sheet() {
        return new Envelope(left, left + viewport.width(), top + 16, top + viewport.height());
    }

    private Geometry onSheet(Geometry drawn) {
        return AffineTransformation.translationInstance(left, top).transform(viewport.px(drawn));
    }

    private Coordinate onSheet(Coordinate drawn) {
        Coordinate px = viewport.px(drawn);
        return new Coordinate(left + px.x, top + px.y);
    }

    private void frame() {
        canvas.box("m-frame", new Coordinate(left, top), viewport.width(), viewport.height());
    }

    private void shapes() {
        section.drawing()
                .layers()
                .forEach(
                        layer -> canvas.layer(layer.name(), () -> layer.shapes().forEach(this::shape)));
    }

    private void shape(Shape shape) {
        if (shape instanceof Shape.Area area) {
            canvas.titled(area.title(), area.feature(), () -> area(area.look(), onSheet(area.outline())));
        } else if (shape instanceof Shape.Line line) {
            canvas.titled(line.title(), line.feature(), () -> line(line));
        } else if (shape instanceof Shape.Dimension dimension) {
            canvas.titled(
                    dimension.text(),
                    () -> DimensionLine.draw(canvas, onSheet(dimension.from()), onSheet(dimension.to())));
        }
    }

    private void area(Look look, Geometry px) {
        if (look == Look.LIMIT) {
            canvas.area(look, px);
        } else {
            canvas.shape(style(look), px);
        }
    }

    private void line(Shape.Line line) {
        Geometry path = onSheet(line.path());
        canvas.line(line.look(), path);
        if (line.look() == Look.GROUND_LINE) {
            canvas.path(line.look().cssClass() + " s-earth", EarthMarks.along(path));
        }
    }

    static String style(Look look) {
        if (SectionKey.isUtility(look)) {
            return look.cssClass() + " s-xing";
        }
        return look == Look.BUILDING ? look.cssClass() + " " + look.cssClass() + "-ground" : look.cssClass();
    }

    /** The poles lie under all else, so that they cross no words. */
    private void pole(Flags.Flag flag) {
        String data = "M" + Svg.number(flag.x()) + " " + Svg.number(top - flag.top()) + "V"
                + Svg.number(top + poleEnd(flag.stand()));
        canvas.path("m-leader s-pole", data);
    }

    private void flag(Flags.Flag flag) {
        double upper = top - flag.top();
        double y = upper + Flags.LINE - 3;
        words("m-legend s-text m-strong", flag.stand().name(), flag.x() + 4, y);
        for (String line : flag.stand().lines()) {
            y += Flags.LINE;
            words("m-legend s-text", line, flag.x() + 4, y);
        }
    }

    private void words(String style, String words, double x, double y) {
        canvas.text(style, words, new Coordinate(x, y), Canvas.Anchor.START);
    }

    /** How far a pole reaches into the drawing: to the top of what it stands on. */
    private double poleEnd(Stand stand) {
        return stand.rim()
                .or(stand::ground)
                .or(() -> stand.levels().stream().findFirst())
                .map(level -> y(section.scale().at(0, level).y) - top)
                .orElse(0.0);
    }

    /** Whether words have room in so many pixels. */
    static boolean hasRoom(String words, double width) {
        return TextWidth.of(words, Flags.FONT) + 4 <= width;
    }
}
