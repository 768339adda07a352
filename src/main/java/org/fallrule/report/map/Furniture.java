package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.fallrule.finding.Outcome;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * North arrow, scale bar and legend. The arrow points to the top of the sheet: the local frame's y axis is grid north at its
 * origin, which over a lot is true north to within the convergence of the grid, mostly less than two degrees.
 */
public final class Furniture {
    private static final double ROW = 19;
    private static final double SWATCH = 30;
    private static final double FONT = 11.5;
    private static final double HEAD = 46;
    private static final double BAR = 120;

    /** One line of the legend. */
    private record Entry(String text, Consumer<Coordinate> swatch) {}

    private final Canvas canvas;
    private final ScaleBar.GroundUnit unit;
    private final double width;
    private final List<Entry> entries = new ArrayList<>();
    private final int columns;

    public Furniture(Canvas canvas, Drawing drawing, double width) {
        this(canvas, drawing, width, Set.of());
    }

    /** With a legend that leaves out what a larger drawing beside it explains. */
    public Furniture(Canvas canvas, Drawing drawing, double width, Set<Look> explained) {
        this.canvas = canvas;
        this.unit = drawing.unit();
        this.width = width;
        Set<Look> looks = Looks.shownIn(drawing);
        for (Look look : Look.values()) {
            if (looks.contains(look) && !explained.contains(look)) {
                entries.add(new Entry(look.legend(), at -> swatch(look, at)));
            }
        }
        if (drawing.shapes(Shape.Dimension.class).findAny().isPresent()) {
            entries.add(new Entry("measured distance", this::dimension));
        }
        drawing.shapes(Shape.Badge.class)
                .map(Shape.Badge::outcome)
                .distinct()
                .sorted()
                .forEach(outcome -> entries.add(new Entry("finding: " + outcome.spoken(), at -> badge(outcome, at))));
        double widest = entries.stream()
                .mapToDouble(entry -> SWATCH + 12 + TextWidth.of(entry.text(), FONT))
                .max()
                .orElse(width);
        this.columns = Math.max(1, (int) (width / widest));
    }

    /** Its height in pixels. */
    public double height() {
        return HEAD + ROW * rows() + 6;
    }

    private int rows() {
        return (entries.size() + columns - 1) / columns;
    }

    /** Paints it with its upper left corner at a place. */
    public void draw(double left, double top, double pxPerMetre) {
        canvas.placed("m-furniture", new Coordinate(left, top), 0, () -> {
            north();
            bar(ScaleBar.within(Math.min(BAR, width - 100), pxPerMetre, unit));
            for (int i = 0; i < entries.size(); i++) {
                entry(entries.get(i), i);
            }
        });
    }

    private void entry(Entry entry, int i) {
        int column = i / rows();
        double x = width / columns * column;
        double y = HEAD + ROW * (i % rows()) + ROW / 2;
        entry.swatch().accept(new Coordinate(x + 2, y));
        legend("m-legend", entry.text(), x + SWATCH + 9, y + 4, Canvas.Anchor.START);
    }

    private void legend(String style, String words, double x, double y, Canvas.Anchor anchor) {
        canvas.text(style, words, new Coordinate(x, y), anchor);
    }

    private void north() {
        canvas.path("m-north", "M17 4L24 34L17 28.5L10 34Z");
        canvas.path("m-north-half", "M17 4L24 34L17 28.5Z");
        legend("m-legend m-strong", "N", 28, 15, Canvas.Anchor.START);
    }

    private void bar(ScaleBar bar) {
        Coordinate corner = new Coordinate(0, 0);
        canvas.placed("m-scale", new Coordinate(58, 26), 0, () -> {
            canvas.box("m-bar", corner, bar.px(), 6);
            canvas.box("m-bar-half", corner, bar.px() / 2, 6);
            legend("m-legend", "0", 0, -5, Canvas.Anchor.MIDDLE);
            legend("m-legend", bar.words(), bar.px(), -5, Canvas.Anchor.MIDDLE);
        });
    }

    private void swatch(Look look, Coordinate at) {
        Coordinate middle = new Coordinate(at.x + SWATCH / 2, at.y);
        switch (Looks.formOf(look)) {
            case SIGN -> Signs.sample(canvas, look, middle);
            case AREA -> canvas.area(look, box(at));
            case LINE -> {
                canvas.line(look, line(at, look == Look.MEASURED ? 5 : 0));
                if (look.isDrain()) {
                    LineMarks.arrow(canvas, middle, 0);
                } else if (!look.ink().code().isEmpty()) {
                    LineMarks.code(canvas, new LineCodes.Code(look, middle, 0));
                }
            }
        }
    }

    private static Geometry box(Coordinate at) {
        return new GeometryFactory().toGeometry(new Envelope(at.x, at.x + SWATCH, at.y - 6, at.y + 6));
    }

    private static String line(Coordinate at, double inset) {
        return "M" + Svg.number(at.x + inset) + " " + Svg.number(at.y) + "h" + Svg.number(SWATCH + 2 - 2 * inset);
    }

    private void dimension(Coordinate at) {
        DimensionLine.draw(canvas, at, new Coordinate(at.x + SWATCH + 2, at.y));
    }

    private void badge(Outcome outcome, Coordinate at) {
        BadgeSign.draw(canvas, outcome, "n", new Coordinate(at.x + SWATCH / 2, at.y), 8.5);
    }
}
