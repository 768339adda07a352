package org.fallrule.report.profile;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.TextWidth;
import org.locationtech.jts.geom.Coordinate;

/** The pipes' figures under the drawing, each under its pipe. A pipe too short for them is spoken of in a sentence below. */
final class PipeBand {
    private static final double LINE = 13.5;
    private static final double ROOM = 8;

    private final Canvas canvas;
    private final Section section;
    private final DoubleUnaryOperator px;

    PipeBand(Canvas canvas, Section section, DoubleUnaryOperator px) {
        this.canvas = canvas;
        this.section = section;
        this.px = px;
    }

    /** What is said of the pipes that have no room for their figures. */
    static List<String> sentences(Section section) {
        return section.facts().stream()
                .filter(facts -> !fits(facts, section))
                .map(PipeFacts::sentence)
                .toList();
    }

    private static boolean fits(PipeFacts facts, Section section) {
        double room = (facts.to() - facts.from()) * section.scale().pxPerMetre();
        return width(facts) + ROOM <= room;
    }

    private static double width(PipeFacts facts) {
        return facts.cell().stream()
                .mapToDouble(line -> TextWidth.of(line, Flags.FONT))
                .max()
                .orElse(0);
    }

    static double height(Section section) {
        boolean any = section.facts().stream().anyMatch(facts -> fits(facts, section));
        if (section.facts().isEmpty()) {
            return 0;
        }
        return any ? 5 * LINE + 10 : LINE + 10;
    }

    void draw(double top) {
        double height = height(section);
        for (PipeFacts facts : section.facts()) {
            double left = px.applyAsDouble(facts.from());
            double right = px.applyAsDouble(facts.to());
            String data = "M" + Svg.number(left) + " " + Svg.number(top) + "V" + Svg.number(top + height - 4) + "M"
                    + Svg.number(right) + " " + Svg.number(top) + "V" + Svg.number(top + height - 4);
            canvas.path("m-frame s-axis", data);
            List<String> lines = fits(facts, section) ? facts.cell() : List.of(facts.id());
            double y = top + LINE;
            for (String line : lines) {
                if (TextWidth.of(line, Flags.FONT) + 3 <= right - left) {
                    String style = y == top + LINE ? "m-legend s-text m-strong" : "m-legend s-text";
                    canvas.text(style, line, new Coordinate((left + right) / 2, y), Canvas.Anchor.MIDDLE);
                }
                y += LINE;
            }
        }
    }
}
