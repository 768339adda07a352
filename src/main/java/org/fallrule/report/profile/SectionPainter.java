package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.TextWidth;
import org.locationtech.jts.geom.Coordinate;

/** Paints a long section with all that belongs to it: axes, flags, figures, what is said of it, and the key. */
public final class SectionPainter {
    private static final double ROW = 15;
    private static final double GAP = 8;

    private final Canvas canvas;
    private final List<String> words;
    private final SectionPlot plot;
    private final SectionKey key;

    public SectionPainter(Canvas canvas, Section section) {
        this(canvas, section, Set.of());
    }

    /** The same with a key that leaves out what another explains. */
    public SectionPainter(Canvas canvas, Section section, Set<Look> explained) {
        this.canvas = canvas;
        this.words = wrapped(section);
        this.plot = new SectionPlot(canvas, section);
        this.key = new SectionKey(canvas, section, explained);
    }

    /** What a page needs to find a station on the section, as {@link SectionPlot} says. */
    String reach() {
        return plot.reach();
    }

    /** Its height in pixels. */
    public double height() {
        return plot.bottom() + ROW * words.size() + GAP + key.height();
    }

    public void draw() {
        plot.draw();
        double below = plot.bottom();
        for (String line : words) {
            below += ROW;
            canvas.text("m-legend s-text", line, new Coordinate(2, below), Canvas.Anchor.START);
        }
        key.draw(below + GAP);
    }

    private static List<String> wrapped(Section section) {
        List<String> sentences = new ArrayList<>(PipeBand.sentences(section));
        sentences.add(section.scale().words());
        sentences.addAll(section.notes());
        List<String> lines = new ArrayList<>();
        sentences.forEach(sentence -> wrap(sentence, section.form().width() - 6, lines));
        return lines;
    }

    private static void wrap(String sentence, double width, List<String> lines) {
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split(" ", -1)) {
            if (line.length() > 0 && TextWidth.of(line + " " + word, Flags.FONT) > width) {
                lines.add(line.toString());
                line.setLength(0);
                line.append("\u2003");
            }
            line.append(line.length() > 1 ? " " : "").append(word);
        }
        lines.add(line.toString());
    }
}
