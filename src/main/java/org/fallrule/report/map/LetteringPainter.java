package org.fallrule.report.map;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Paints words, codes and badges. A badge leads to its finding. */
final class LetteringPainter {
    private final Canvas canvas;

    LetteringPainter(Canvas canvas) {
        this.canvas = canvas;
    }

    void draw(Lettering lettering) {
        lettering.codes().forEach(code -> LineMarks.code(canvas, code));
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
        canvas.path("m-leader", data);
    }

    private void word(Lettering.Word word) {
        double font = Lettering.fontPx(word.label());
        String rank = word.label().rank().name().toLowerCase(Locale.ROOT);
        Coordinate middle = word.box().centre();
        canvas.text(
                "m-label m-" + rank + "-label",
                word.label().text(),
                new Coordinate(middle.x, middle.y + font * 0.36),
                Canvas.Anchor.MIDDLE);
    }

    private void badge(Lettering.Mark mark) {
        leader(mark.box(), mark.pointsAt());
        canvas.link(
                mark.badge().number(),
                mark.badge().title(),
                mark.box().centre(),
                Lettering.BADGE_PX / 2,
                () -> BadgeSign.draw(
                        canvas,
                        mark.badge().outcome(),
                        String.valueOf(mark.badge().number()),
                        mark.box().centre(),
                        Lettering.BADGE_PX / 2));
    }
}
