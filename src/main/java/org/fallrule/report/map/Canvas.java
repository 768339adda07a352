package org.fallrule.report.map;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * What a drawing is painted on: a file of SVG, a page. Places and lengths are in pixels of the sheet, y down. A style is one name
 * or several with a space between, as {@link MapStyle} has them; path data are written as SVG writes them (SVG 1.1, 8.3).
 */
public interface Canvas {
    /** Which of its points a text has at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** An area with its edge and its hatch. */
    void area(Look look, Geometry px);

    /** A line or the edge of an area, in a style without hatch. */
    void shape(String style, Geometry px);

    /** A line of the plan, with its casing if it has one. */
    default void line(Look look, Geometry px) {
        if (!look.ink().casing().isNone()) {
            shape(look.casingClass(), px);
        }
        shape(look.cssClass(), px);
    }

    /** A sample of such a line. */
    default void line(Look look, String data) {
        if (!look.ink().casing().isNone()) {
            path(look.casingClass(), data);
        }
        path(look.cssClass(), data);
    }

    /** Lines and areas that are no part of the plan, moved to a place and turned clockwise by so many degrees. */
    void path(String style, Coordinate at, double degrees, String data);

    default void path(String style, String data) {
        path(style, new Coordinate(0, 0), 0, data);
    }

    void circle(String style, Coordinate at, double radius);

    /** A box by its upper left corner, its width and its height. */
    void box(String style, Coordinate corner, double width, double height);

    /** Words on a line; the place lies on their baseline. */
    void text(String style, String words, Coordinate at, Anchor anchor);

    /** Everything painted meanwhile is moved to a place and turned clockwise by so many degrees. */
    void placed(String name, Coordinate at, double degrees, Runnable content);

    /** Everything painted meanwhile belongs together under a name. */
    void layer(String name, Runnable content);

    /** Everything painted meanwhile is one thing with a title for whoever points at it. */
    void titled(String title, Runnable content);

    /** The same, and it is part of a feature. */
    default void titled(String title, Optional<String> feature, Runnable content) {
        titled(title, content);
    }

    /** Everything painted meanwhile, a sign about a place, leads to a finding. */
    void link(int finding, String title, Coordinate middle, double radius, Runnable content);
}
