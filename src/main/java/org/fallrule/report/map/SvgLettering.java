package org.fallrule.report.map;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Words, codes and badges as SVG. A badge is a link to its finding on the page. */
final class SvgLettering {
    private final Svg svg;

    SvgLettering(Svg svg) {
        this.svg = svg;
    }

    void draw(Lettering lettering) {
        lettering.codes().forEach(code -> SvgLines.code(svg, code));
        lettering.words().forEach(this::leader);
        lettering.words().forEach(this::word);
        lettering.marks().forEach(this::badge);
    }

    private void leader(Lettering.Word word) {
        word.leader().ifPresent(to -> leader(word.box(), to));
    }

    private void leader(Envelope box, Coordinate to) {
        double x = Math.max(box.getMinX(), Math.min(box.getMaxX(), to.x));
        double y = Math.max(box.getMinY(), Math.min(box.getMaxY(), to.y));
        String data = "M" + Svg.number(x) + " " + Svg.number(y) + "L" + Svg.number(to.x) + " " + Svg.number(to.y);
        svg.empty("path", "class", "m-leader", "d", data);
    }

    private void word(Lettering.Word word) {
        double font = Lettering.fontPx(word.label());
        svg.leaf(
                "text",
                word.label().text(),
                "class",
                "m-label m-" + word.label().rank().name().toLowerCase(Locale.ROOT) + "-label",
                "x",
                word.box().centre().x,
                "y",
                word.box().centre().y + font * 0.36,
                "text-anchor",
                "middle");
    }

    private void badge(Lettering.Mark mark) {
        leader(mark.box(), mark.pointsAt());
        svg.open(
                "a",
                "href",
                "#finding-" + mark.badge().number(),
                "aria-label",
                mark.badge().number() + ": " + mark.badge().title());
        svg.leaf("title", mark.badge().number() + ": " + mark.badge().title());
        SvgBadge.draw(
                svg,
                mark.badge().outcome(),
                String.valueOf(mark.badge().number()),
                mark.box().centre(),
                Lettering.BADGE_PX / 2);
        svg.close("a");
    }
}
