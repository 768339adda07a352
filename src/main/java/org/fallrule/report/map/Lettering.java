package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** All that is written on a map, each word where there is room for it. */
final class Lettering {
    static final double LABEL_PX = 12;
    static final double VALUE_PX = 14;
    static final double BADGE_PX = 20;

    /** The gap in pixels between a thing and its name from which on a leader joins them. */
    private static final double LEADER_FROM = 16;

    private static final double[] NEAR = {12, 18};
    private static final double[] NEAR_AND_FAR = {12, 18, 30, 46, 66, 90, 120, 160};
    private static final double EDGE = 3;

    /** Words in their place; {@code leader} leads from the box to what they name. */
    record Word(Shape.Label label, Envelope box, Optional<Coordinate> leader) {}

    /** A badge in its place. */
    record Mark(Shape.Badge badge, Envelope box, Coordinate pointsAt) {}

    private final Viewport viewport;
    private final LabelPlacer placer;
    private final List<Word> words = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final LineCodes codes;

    Lettering(Drawing drawing, Viewport viewport) {
        this.viewport = viewport;
        Obstacles obstacles = new Obstacles(drawing, viewport);
        Envelope sheet = viewport.sheet();
        sheet.expandBy(-EDGE);
        this.placer = new LabelPlacer(sheet, obstacles.closed(), obstacles.crossed());
        List<Shape.Label> labels = inOrder(drawing);
        labels.stream().filter(Shape.Label::kept).forEach(this::write);
        drawing.shapes(Shape.Badge.class).forEach(this::mark);
        labels.stream()
                .filter(label -> !label.kept() && label.rank().compareTo(Shape.Rank.CODE) < 0)
                .forEach(this::write);
        this.codes = new LineCodes(drawing, viewport, placer);
        labels.stream()
                .filter(label -> !label.kept() && label.rank().compareTo(Shape.Rank.CODE) > 0)
                .forEach(this::write);
    }

    List<Word> words() {
        return words;
    }

    List<Mark> marks() {
        return marks;
    }

    List<LineCodes.Code> codes() {
        return codes.all();
    }

    private static List<Shape.Label> inOrder(Drawing drawing) {
        List<Shape.Label> labels =
                new ArrayList<>(drawing.shapes(Shape.Label.class).toList());
        drawing.shapes(Shape.Dimension.class).map(Lettering::ofDimension).forEach(labels::add);
        labels.sort(Comparator.comparing(Shape.Label::rank));
        return labels;
    }

    private static Shape.Label ofDimension(Shape.Dimension dimension) {
        Geometry line = new GeometryFactory().createLineString(new Coordinate[] {dimension.from(), dimension.to()});
        return new Shape.Label(Shape.Rank.VALUE, dimension.text(), line, true);
    }

    static double fontPx(Shape.Label label) {
        return label.rank() == Shape.Rank.VALUE ? VALUE_PX : LABEL_PX;
    }

    private void write(Shape.Label label) {
        double font = fontPx(label);
        LabelCandidates boxes = new LabelCandidates(TextWidth.of(label.text(), font) + 6, font * 1.35);
        Geometry thing = viewport.px(label.of());
        Optional<Envelope> box =
                label.kept() ? placer.placeAnyway(kept(boxes, thing)) : placer.place(candidates(boxes, thing, NEAR));
        box.ifPresent(found -> words.add(new Word(label, found, leader(thing, found))));
    }

    private static List<Envelope> kept(LabelCandidates boxes, Geometry thing) {
        return Stream.concat(
                        candidates(boxes, thing, NEAR_AND_FAR),
                        boxes.around(thing.getGeometryN(0).getInteriorPoint().getCoordinate(), NEAR_AND_FAR).stream())
                .toList();
    }

    private static Stream<Envelope> candidates(LabelCandidates boxes, Geometry thing, double... gaps) {
        return switch (thing.getDimension()) {
            case 2 -> boxes.inside(thing);
            case 1 ->
                (thing.getLength() > 0 ? boxes.beside(thing, gaps) : boxes.around(thing.getCoordinate(), gaps))
                        .stream();
            default -> boxes.around(thing.getCoordinate(), gaps).stream();
        };
    }

    private static Optional<Coordinate> leader(Geometry thing, Envelope box) {
        Geometry words = thing.getFactory().toGeometry(box);
        Coordinate[] nearest = org.locationtech.jts.operation.distance.DistanceOp.nearestPoints(thing, words);
        return nearest[0].distance(nearest[1]) > LEADER_FROM ? Optional.of(nearest[0]) : Optional.empty();
    }

    private void mark(Shape.Badge badge) {
        Coordinate place = viewport.px(badge.place());
        placer.placeAnyway(new LabelCandidates(BADGE_PX + 2, BADGE_PX + 2).around(place, 9, 18, 30, 46, 66, 90))
                .ifPresent(box -> marks.add(new Mark(badge, box, place)));
    }
}
