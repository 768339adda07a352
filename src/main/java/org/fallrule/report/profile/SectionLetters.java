package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fallrule.report.map.BadgeSign;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.LabelCandidates;
import org.fallrule.report.map.LabelPlacer;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.TextWidth;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What is lettered inside of a section: what lies above, the kinds of utilities, the numbers of findings. */
final class SectionLetters {
    private static final double BADGE = 20;
    private static final double PIECE = 6;
    private static final double[] GAPS = {3, 8, 15, 24, 36, 50, 70};

    private final Canvas canvas;
    private final Section section;
    private final UnaryOperator<Geometry> onSheet;
    private final LabelPlacer placer;

    SectionLetters(Canvas canvas, Section section, UnaryOperator<Geometry> onSheet, Envelope sheet) {
        this.canvas = canvas;
        this.section = section;
        this.onSheet = onSheet;
        this.placer = new LabelPlacer(sheet, closed(), List.of());
    }

    /** What letters keep off: every line drawn, and circles and bars whole. */
    private List<Envelope> closed() {
        List<Envelope> closed = new ArrayList<>();
        section.drawing().shapes(Shape.Line.class).forEach(line -> along(onSheet.apply(line.path()), closed));
        section.drawing().shapes(Shape.Dimension.class).forEach(each -> along(onSheet.apply(line(each)), closed));
        section.drawing()
                .shapes(Shape.Area.class)
                .filter(area -> !isStrip(area))
                .forEach(area -> addArea(area, closed));
        return closed;
    }

    private void addArea(Shape.Area area, List<Envelope> closed) {
        Geometry outline = onSheet.apply(area.outline());
        if (area.look() == Look.PIPE_WALL || area.look() == Look.LIMIT) {
            along(outline.getBoundary(), closed);
        } else {
            closed.add(outline.getEnvelopeInternal());
        }
    }

    private static void along(Geometry path, List<Envelope> closed) {
        Coordinate[] places = path.getCoordinates();
        for (int i = 1; i < places.length; i++) {
            int pieces = (int) Math.ceil(places[i - 1].distance(places[i]) / PIECE);
            for (int k = 0; k < pieces; k++) {
                closed.add(new Envelope(
                        between(places[i - 1], places[i], (double) k / pieces),
                        between(places[i - 1], places[i], (k + 1.0) / pieces)));
            }
        }
    }

    private static Coordinate between(Coordinate from, Coordinate to, double share) {
        return new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
    }

    private boolean isStrip(Shape.Area area) {
        return section.drawing()
                .layer("above")
                .filter(layer -> layer.shapes().contains(area))
                .isPresent();
    }

    void draw() {
        section.drawing().layer("above").ifPresent(layer -> layer.shapes().forEach(this::surface));
        section.drawing()
                .shapes(Shape.Area.class)
                .filter(area -> SectionKey.isUtility(area.look()))
                .forEach(area -> code(area.look(), area.look().ink().code(), area.outline()));
        section.drawing()
                .shapes(Shape.Line.class)
                .filter(line -> SectionKey.isUtility(line.look()))
                .forEach(line -> code(line.look(), unknown(line.look()), line.path()));
        section.drawing().shapes(Shape.Dimension.class).forEach(this::value);
        section.drawing().shapes(Shape.Label.class).forEach(this::label);
        section.drawing().shapes(Shape.Badge.class).forEach(this::badge);
    }

    private static String unknown(Look look) {
        return look == Look.UTILITY ? "?" : look.ink().code() + " ?";
    }

    /** The word for what lies above, or its first letter, where there is room. */
    private void surface(Shape shape) {
        if (!(shape instanceof Shape.Area area)) {
            return;
        }
        Envelope box = onSheet.apply(area.outline()).getEnvelopeInternal();
        String initial = area.title().substring(0, 1).toUpperCase(java.util.Locale.ROOT);
        String words = SectionPlot.hasRoom(area.title(), box.getWidth()) ? area.title() : initial;
        if (SectionPlot.hasRoom(words, box.getWidth() + 3)) {
            text("m-legend s-text", words, box.centre());
        }
    }

    private static Geometry line(Shape.Dimension dimension) {
        return new GeometryFactory().createLineString(new Coordinate[] {dimension.from(), dimension.to()});
    }

    private void value(Shape.Dimension dimension) {
        beside(onSheet.apply(line(dimension)), dimension.text(), 14, "m-label m-value-label", true);
    }

    private void label(Shape.Label label) {
        switch (label.rank()) {
            case SURFACE -> notKnown(label);
            case LIMIT -> beside(onSheet.apply(label.of()), label.text(), 12, "m-label m-limit-label", label.kept());
            default -> beside(onSheet.apply(label.of()), label.text(), 12, "m-label", label.kept());
        }
    }

    /** Words beside what they name, wherever there is most room. */
    private void beside(Geometry thing, String words, double font, String style, boolean kept) {
        LabelCandidates boxes = new LabelCandidates(TextWidth.of(words, font) + 6, font * 1.25);
        List<Envelope> candidates = new ArrayList<>();
        if (thing.getDimension() == 1 && thing.getLength() > 0) {
            candidates.addAll(boxes.beside(thing, GAPS));
        }
        candidates.addAll(boxes.around(thing.getInteriorPoint().getCoordinate(), GAPS));
        Optional<Envelope> found = kept ? placer.placeAnyway(candidates) : placer.place(candidates.stream());
        found.ifPresent(box -> text(style, words, box.centre()));
    }

    private void notKnown(Shape.Label label) {
        Envelope stretch = onSheet.apply(label.of()).getEnvelopeInternal();
        String words = SectionPlot.hasRoom(label.text(), stretch.getWidth()) ? label.text() : "?";
        text("m-label m-surface-label s-text", words, stretch.centre());
    }

    private void code(Look look, String code, Geometry of) {
        Envelope thing = onSheet.apply(of).getEnvelopeInternal();
        double width = TextWidth.of(code, 10.5) + 2;
        LabelCandidates boxes = new LabelCandidates(width, 12);
        List<Envelope> candidates = new ArrayList<>();
        if (of.getDimension() == 1) {
            for (double share : new double[] {0.5, 0.35, 0.65, 0.2, 0.8, 0.92}) {
                double y = thing.getMinY() + share * thing.getHeight();
                candidates.addAll(boxes.around(new Coordinate(thing.getMinX(), y), 5));
            }
        } else {
            double radius = thing.getWidth() / 2;
            candidates.addAll(boxes.around(thing.centre(), radius + 3, radius + 7, radius + 13, radius + 20));
        }
        placer.placeAnyway(candidates)
                .ifPresent(box -> text("m-code " + look.cssClass() + "-code", code, box.centre()));
    }

    private void text(String style, String words, Coordinate middle) {
        canvas.text(style, words, new Coordinate(middle.x, middle.y + 4), Canvas.Anchor.MIDDLE);
    }

    private void badge(Shape.Badge badge) {
        Coordinate place = onSheet.apply(new org.locationtech.jts.geom.GeometryFactory().createPoint(badge.place()))
                .getCoordinate();
        Optional<Envelope> box = placer.placeAnyway(new LabelCandidates(BADGE + 2, BADGE + 2).around(place, GAPS));
        box.ifPresent(found -> badge(badge, place, found));
    }

    private void badge(Shape.Badge badge, Coordinate place, Envelope box) {
        String data = "M" + Svg.number(box.centre().x) + " " + Svg.number(box.centre().y) + "L" + Svg.number(place.x)
                + " " + Svg.number(place.y);
        canvas.path("m-leader s-pointer", data);
        canvas.link(
                badge.number(),
                badge.title(),
                box.centre(),
                BADGE / 2,
                () -> BadgeSign.draw(canvas, badge.outcome(), String.valueOf(badge.number()), box.centre(), BADGE / 2));
    }
}
