package org.fallrule.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A face of Source Sans 3, embedded as far as a document uses it. */
final class Typeface {
    private static final String BOX = "\u25A1";

    private final PDFont font;
    /** Which characters the face has, as far as they were asked for. */
    private final Map<Integer, Boolean> known = new HashMap<>();
    /** How wide they are, in thousandths of the size: asking the font takes long. */
    private final Map<Integer, Float> widths = new HashMap<>();

    private Typeface(PDFont font) {
        this.font = font;
    }

    static Typeface regular(PDDocument document) throws IOException {
        return load(document, "SourceSans3-Regular.ttf");
    }

    static Typeface semibold(PDDocument document) throws IOException {
        return load(document, "SourceSans3-Semibold.ttf");
    }

    /** Without ligatures: what is copied from the page keeps the letters of ft. */
    private static Typeface load(PDDocument document, String name) throws IOException {
        try (InputStream in = Typeface.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not beside " + Typeface.class.getName());
            }
            TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            face.setEnableGsub(false);
            return new Typeface(PDType0Font.load(document, face, true));
        }
    }

    PDFont font() {
        return font;
    }

    /** The text with every character that the face lacks shown by its number. */
    String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.codePoints().filter(Typeface::isSeen).forEach(point -> {
            printable.append(has(point) ? Character.toString(point) : String.format("[U+%04X]", point));
        });
        return printable.toString();
    }

    /** The text with every character that the face lacks as a box, for where there is no room for more. */
    String boxed(String text) {
        StringBuilder boxed = new StringBuilder();
        text.codePoints().filter(Typeface::isSeen).forEach(point -> {
            boxed.append(has(point) ? Character.toString(point) : Character.isWhitespace(point) ? " " : BOX);
        });
        return boxed.toString();
    }

    /** The marks that only keep a run of letters apart (UAX #9) are not printed: a page's letters stay where they are set. */
    private static boolean isSeen(int point) {
        return point < 0x2066 || point > 0x2069;
    }

    private boolean has(int point) {
        return known.computeIfAbsent(point, this::looked);
    }

    private boolean looked(int point) {
        try {
            font.encode(Character.toString(point));
            return true;
        } catch (IOException | IllegalArgumentException e) {
            return false;
        }
    }

    /** Printable text, cut with an ellipsis where it is wider than so many points. */
    String cut(String text, double size, double width) {
        String whole = printable(text);
        if (width(whole, size) <= width) {
            return whole;
        }
        return whole.substring(0, fitting(whole, size, width - width("…", size)))
                        .strip() + "…";
    }

    /** The width in points of printable text. */
    double width(String text, double size) {
        float width = 0;
        for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
            width += widths.computeIfAbsent(text.codePointAt(at), this::measured);
        }
        return width * size / 1000;
    }

    private float measured(int point) {
        try {
            return font.getStringWidth(Character.toString(point));
        } catch (IOException e) {
            throw new IllegalStateException("the font is held in memory", e);
        }
    }

    /** Printable text in lines no wider than so many points; a longer word is cut. */
    List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : printable(text.replaceAll("\\s", " ")).strip().split("\\s+", -1)) {
            String rest = word;
            if (!line.isEmpty() && width(line + " " + rest, size) > width) {
                lines.add(line);
                line = "";
            }
            while (line.isEmpty() && width(rest, size) > width && rest.codePointCount(0, rest.length()) > 1) {
                int cut = fitting(rest, size, width);
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            line = line.isEmpty() ? rest : line + " " + rest;
        }
        lines.add(line);
        return lines;
    }

    private int fitting(String word, double size, double width) {
        int cut = word.offsetByCodePoints(0, 1);
        while (cut < word.length() && width(word.substring(0, word.offsetByCodePoints(cut, 1)), size) <= width) {
            cut = word.offsetByCodePoints(cut, 1);
        }
        return cut;
    }
}
