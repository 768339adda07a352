package org.fallrule.report.map;

import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Paints as SVG. Colours come by class. */
public final class SvgCanvas implements Canvas {
    private final Svg svg;
    private final String prefix;
    private final boolean namesFeatures;

    /**
     * @param svg where the elements go
     * @param prefix what begins the ids of the hatches
     */
    public SvgCanvas(Svg svg, String prefix) {
        this(svg, prefix, true);
    }

    /**
     * The same.
     *
     * @param namesFeatures whether shapes carry the name of the feature that they are part of
     */
    SvgCanvas(Svg svg, String prefix, boolean namesFeatures) {
        this.namesFeatures = namesFeatures;
        this.svg = svg;
        this.prefix = prefix;
    }

    /** A canvas whose shapes do not say which feature they are part of. */
    public static SvgCanvas nameless(Svg svg, String prefix) {
        return new SvgCanvas(svg, prefix, false);
    }

    @Override
    public void area(Look look, Geometry px) {
        svg.empty("path", Looks.areaAttributes(look, prefix, Svg.path(px)));
    }

    @Override
    public void shape(String style, Geometry px) {
        svg.empty("path", "class", style, "d", Svg.path(px));
    }

    @Override
    public void path(String style, Coordinate at, double degrees, String data) {
        if (at.x == 0 && at.y == 0 && degrees == 0) {
            svg.empty("path", "class", style, "d", data);
        } else {
            svg.empty("path", "class", style, "transform", transform(at, degrees), "d", data);
        }
    }

    @Override
    public void circle(String style, Coordinate at, double radius) {
        svg.empty("circle", "class", style, "cx", at.x, "cy", at.y, "r", radius);
    }

    @Override
    public void box(String style, Coordinate corner, double width, double height) {
        svg.empty("rect", "class", style, "x", corner.x, "y", corner.y, "width", width, "height", height);
    }

    @Override
    public void text(String style, String words, Coordinate at, Anchor anchor) {
        if (anchor == Anchor.START) {
            svg.leaf("text", words, "class", style, "x", at.x, "y", at.y);
        } else {
            String word = anchor.name().toLowerCase(Locale.ROOT);
            svg.leaf("text", words, "class", style, "x", at.x, "y", at.y, "text-anchor", word);
        }
    }

    @Override
    public void placed(String name, Coordinate at, double degrees, Runnable content) {
        svg.open("g", "class", name, "transform", transform(at, degrees));
        content.run();
        svg.close("g");
    }

    private static String transform(Coordinate at, double degrees) {
        String moved = "translate(" + Svg.number(at.x) + " " + Svg.number(at.y) + ")";
        return degrees == 0 ? moved : moved + " rotate(" + Svg.number(degrees) + ")";
    }

    @Override
    public void layer(String name, Runnable content) {
        svg.open("g", "class", "layer-" + name.replace('_', '-'));
        content.run();
        svg.close("g");
    }

    @Override
    public void titled(String title, Runnable content) {
        titled(title, Optional.empty(), content);
    }

    @Override
    public void titled(String title, Optional<String> feature, Runnable content) {
        Object[] name = feature.filter(each -> namesFeatures)
                .map(each -> new Object[] {"data-feature", each})
                .orElseGet(() -> new Object[0]);
        svg.open("g", name).leaf("title", title);
        content.run();
        svg.close("g");
    }

    @Override
    public void link(int finding, String title, Coordinate middle, double radius, Runnable content) {
        svg.open("a", "href", "#finding-" + finding, "aria-label", finding + ": " + title);
        svg.leaf("title", finding + ": " + title);
        content.run();
        svg.close("a");
    }
}
