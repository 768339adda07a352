package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.fallrule.finding.Outcome;
import org.locationtech.jts.geom.Coordinate;

/**
 * North arrow, scale bar and legend. The arrow points to the top of the sheet: the local frame's y axis is grid north at its
 * origin, which over a lot is true north to within the convergence of the grid, mostly less than two degrees.
 */
final class SvgFurniture {
    private static final double ROW = 19;
    private static final double SWATCH = 30;
    private static final double FONT = 11.5;
    private static final double HEAD = 46;
    private static final double BAR = 120;

    /** One line of the legend. */
    private record Entry(String text, Consumer<Coordinate> swatch) {}

    private final Svg svg;
    private final String prefix;
    private final double width;
    private final List<Entry> entries = new ArrayList<>();
    private final int columns;

    SvgFurniture(Svg svg, String prefix, Drawing drawing, double width) {
        this.svg = svg;
        this.prefix = prefix;
        this.width = width;
        Set<Look> looks = Looks.shownIn(drawing);
        for (Look look : Look.values()) {
            if (looks.contains(look)) {
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

    double height() {
        return HEAD + ROW * rows() + 6;
    }

    private int rows() {
        return (entries.size() + columns - 1) / columns;
    }

    void draw(double left, double top, double pxPerMetre) {
        svg.open("g", "class", "m-furniture", "transform", SvgSigns.moved(new Coordinate(left, top)));
        north();
        bar(ScaleBar.within(Math.min(BAR, width - 100), pxPerMetre));
        for (int i = 0; i < entries.size(); i++) {
            int column = i / rows();
            double x = width / columns * column;
            double y = HEAD + ROW * (i % rows()) + ROW / 2;
            entries.get(i).swatch().accept(new Coordinate(x + 2, y));
            svg.leaf("text", entries.get(i).text(), "class", "m-legend", "x", x + SWATCH + 9, "y", y + 4);
        }
        svg.close("g");
    }

    private void north() {
        svg.empty("path", "class", "m-north", "d", "M17 4L24 34L17 28.5L10 34Z");
        svg.empty("path", "class", "m-north-half", "d", "M17 4L24 34L17 28.5Z");
        svg.leaf("text", "N", "class", "m-legend m-strong", "x", 28, "y", 15);
    }

    private void bar(ScaleBar bar) {
        double start = 58;
        String half = Svg.number(bar.px() / 2);
        svg.open("g", "class", "m-scale", "transform", SvgSigns.moved(new Coordinate(start, 26)));
        svg.empty("rect", "class", "m-bar", "x", 0, "y", 0, "width", Svg.number(bar.px()), "height", 6);
        svg.empty("rect", "class", "m-bar-half", "x", 0, "y", 0, "width", half, "height", 6);
        svg.leaf("text", "0", "class", "m-legend", "x", 0, "y", -5, "text-anchor", "middle");
        svg.leaf("text", bar.feet() + " ft", "class", "m-legend", "x", bar.px(), "y", -5, "text-anchor", "middle");
        svg.close("g");
    }

    private void swatch(Look look, Coordinate at) {
        Coordinate middle = new Coordinate(at.x + SWATCH / 2, at.y);
        switch (Looks.formOf(look)) {
            case SIGN -> SvgSigns.sample(svg, look, middle);
            case AREA -> svg.empty("path", Looks.areaAttributes(look, prefix, box(at)));
            case LINE -> {
                svg.empty("path", "class", look.cssClass(), "d", line(at, look == Look.MEASURED ? 5 : 0));
                if (look == Look.PIPE) {
                    SvgLines.arrow(svg, middle, 0);
                } else if (!look.ink().code().isEmpty()) {
                    SvgLines.code(svg, new LineCodes.Code(look, middle, 0));
                }
            }
        }
    }

    private static String box(Coordinate at) {
        return "M" + Svg.number(at.x) + " " + Svg.number(at.y - 6) + "h" + Svg.number(SWATCH) + "v12h-"
                + Svg.number(SWATCH) + "Z";
    }

    private static String line(Coordinate at, double inset) {
        return "M" + Svg.number(at.x + inset) + " " + Svg.number(at.y) + "h" + Svg.number(SWATCH + 2 - 2 * inset);
    }

    private void dimension(Coordinate at) {
        SvgDimension.draw(svg, at, new Coordinate(at.x + SWATCH + 2, at.y));
    }

    private void badge(Outcome outcome, Coordinate at) {
        SvgBadge.draw(svg, outcome, "n", new Coordinate(at.x + SWATCH / 2, at.y), 8.5);
    }
}
