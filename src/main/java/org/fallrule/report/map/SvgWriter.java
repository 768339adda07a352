package org.fallrule.report.map;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;

/**
 * Prints a drawing as SVG. One unit of the viewBox is one screen pixel at the sheet's own size, strokes keep their width when
 * it is scaled, and colours come by class from {@link MapStyle}, so that several maps on a page share them.
 */
public final class SvgWriter {
    private static final double GAP = 14;

    private final Svg svg = new Svg();
    private final Canvas canvas;
    private final Drawing drawing;
    private final String prefix;
    private final Viewport viewport;
    private final Set<Look> explained;

    private SvgWriter(Drawing drawing, Sheet sheet, String prefix, Set<Look> explained) {
        this.explained = explained;
        this.drawing = drawing;
        this.prefix = prefix;
        this.canvas = new SvgCanvas(svg, prefix, !sheet.equals(Sheet.SNIPPET));
        this.viewport = Viewport.of(drawing.view(), sheet.mapWidth());
    }

    /**
     * The SVG for a page that carries the style.
     *
     * @param prefix letters, digits and hyphens that begin every id in it; another for each map of a page
     */
    public static String inline(Drawing drawing, Sheet sheet, String prefix) {
        return new SvgWriter(drawing, sheet, prefix, Set.of()).write(sheet, Optional.empty());
    }

    /**
     * The SVG of one finding's map for a page that carries the style and a map of the whole plan. Its legend leaves out what
     * the larger one explains, and its shapes do not say which feature they are part of.
     */
    public static String snippet(Drawing drawing, String prefix, Set<Look> explained) {
        return new SvgWriter(drawing, Sheet.SNIPPET, prefix, explained).write(Sheet.SNIPPET, Optional.empty());
    }

    /** What the legend of a map explains. */
    public static Set<Look> legend(Drawing drawing) {
        return Looks.shownIn(drawing);
    }

    /** The SVG as a file of its own. */
    public static String standalone(Drawing drawing, Sheet sheet) {
        return new SvgWriter(drawing, sheet, "map", Set.of()).write(sheet, Optional.of(MapStyle.css()));
    }

    private String write(Sheet sheet, Optional<String> style) {
        Furniture furniture = new Furniture(canvas, drawing, sheet.legendWidth(), explained);
        boolean beside = sheet.legendBeside();
        double width = beside ? sheet.mapWidth() + 2 * GAP + sheet.legendWidth() : sheet.mapWidth();
        double height =
                beside ? Math.max(viewport.height(), furniture.height()) : viewport.height() + furniture.height() + 4;
        head(width, height);
        style.ifPresent(css -> svg.leaf("style", css));
        definitions();
        map();
        furniture.draw(
                beside ? sheet.mapWidth() + 2 * GAP : 0, beside ? 0 : viewport.height() + 4, viewport.pxPerMetre());
        return svg.close("svg").toString();
    }

    private void head(double width, double height) {
        boolean hasLinks = drawing.shapes(Shape.Badge.class).findAny().isPresent();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "map",
                "viewBox",
                "0 0 " + Svg.number(width) + " " + Svg.number(height),
                "width",
                Svg.number(width),
                "height",
                Svg.number(height),
                "role",
                hasLinks ? "group" : "img",
                "aria-labelledby",
                prefix + "-title " + prefix + "-desc");
        svg.leaf("title", drawing.title(), "id", prefix + "-title");
        svg.leaf("desc", drawing.description(), "id", prefix + "-desc");
    }

    private void definitions() {
        svg.open("defs").open("clipPath", "id", prefix + "-clip");
        svg.empty("rect", "width", viewport.width(), "height", viewport.height());
        svg.close("clipPath");
        for (Look look : Looks.shownIn(drawing)) {
            if (look.ink().hatch() != Ink.Hatch.NONE) {
                Hatches.write(svg, look, prefix);
            }
        }
        svg.close("defs");
    }

    /** What a page needs to find a place of the local frame on the map: its left and upper edge in metres, pixels to a metre. */
    private String frame() {
        Envelope view = drawing.view();
        return String.format(Locale.ROOT, "%.3f %.3f %.5f", view.getMinX(), view.getMaxY(), viewport.pxPerMetre());
    }

    private void map() {
        svg.open("g", "clip-path", "url(#" + prefix + "-clip)");
        MapPainter map = new MapPainter(canvas, drawing, viewport);
        svg.open("g", "class", "m-view", "data-frame", frame());
        map.inside();
        svg.close("g").close("g");
        map.frame();
    }
}
