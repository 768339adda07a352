package org.fallrule.report.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.fallrule.report.map.Ink;
import org.fallrule.report.map.Look;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Lines and fills on a page; all places in points. */
final class Strokes {
    /** The part of a circle's radius that lies between the end of a quarter and its control point: 4/3 (√2 − 1). */
    private static final double CONTROL = 4.0 / 3 * (Math.sqrt(2) - 1);

    private static final double HATCH = 7;
    /** Most lines or rows of a hatch; a larger area gets a wider one. */
    private static final int MOST = 400;

    private final PDPageContentStream content;
    private final double scale;

    /**
     * @param scale points to a pixel of the sheet, in which brushes are measured
     */
    Strokes(PDPageContentStream content, double scale) {
        this.content = content;
        this.scale = scale;
    }

    /** Lays out a path of lines, or of the rings of areas. */
    void trace(Geometry geometry) throws IOException {
        Geometry edges = geometry.getDimension() == 2 ? geometry.getBoundary() : geometry;
        for (int i = 0; i < edges.getNumGeometries(); i++) {
            Coordinate[] places = edges.getGeometryN(i).getCoordinates();
            for (int j = 0; j < places.length; j++) {
                if (j == 0) {
                    move(places[j]);
                } else {
                    line(places[j]);
                }
            }
            if (geometry.getDimension() == 2 && places.length > 0) {
                content.closePath();
            }
        }
    }

    void trace(String data, AffineTransformation onPage) {
        PathData.follow(data, new PathData.Pen() {
            @Override
            public void move(double x, double y) {
                write(() -> Strokes.this.move(onPage.transform(new Coordinate(x, y), new Coordinate())));
            }

            @Override
            public void line(double x, double y) {
                write(() -> Strokes.this.line(onPage.transform(new Coordinate(x, y), new Coordinate())));
            }

            @Override
            public void close() {
                write(content::closePath);
            }
        });
    }

    /** A piece of a path, which may fail as writing may. */
    interface Piece {
        void write() throws IOException;
    }

    static void write(Piece piece) {
        try {
            piece.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void circle(Coordinate middle, double radius) throws IOException {
        float c = (float) (radius * CONTROL);
        float r = (float) radius;
        float x = (float) middle.x;
        float y = (float) middle.y;
        content.moveTo(x + r, y);
        content.curveTo(x + r, y + c, x + c, y + r, x, y + r);
        content.curveTo(x - c, y + r, x - r, y + c, x - r, y);
        content.curveTo(x - r, y - c, x - c, y - r, x, y - r);
        content.curveTo(x + c, y - r, x + r, y - c, x + r, y);
        content.closePath();
    }

    private void move(Coordinate place) throws IOException {
        content.moveTo((float) place.x, (float) place.y);
    }

    private void line(Coordinate place) throws IOException {
        content.lineTo((float) place.x, (float) place.y);
    }

    /** Fills and strokes a path; one of which nothing would be seen is not laid out at all. */
    void paint(Brush brush, boolean closed, Piece path) throws IOException {
        boolean fills = closed && brush.fills();
        if (!fills && !brush.strokes()) {
            return;
        }
        path.write();
        if (fills && brush.strokes()) {
            prepare(brush);
            content.setNonStrokingColor(colour(brush.fill()));
            content.fillAndStrokeEvenOdd();
        } else if (fills) {
            fill(brush);
        } else {
            stroke(brush);
        }
    }

    void fill(Brush brush) throws IOException {
        content.setNonStrokingColor(colour(brush.fill()));
        content.fillEvenOdd();
    }

    void stroke(Brush brush) throws IOException {
        prepare(brush);
        content.stroke();
    }

    /** Takes up the brush's colour, width and dash. */
    void prepare(Brush brush) throws IOException {
        content.setStrokingColor(faint(brush.stroke(), brush.strength()));
        content.setLineWidth((float) (brush.width() * scale));
        content.setLineJoinStyle(1);
        content.setLineCapStyle(brush.round() ? 1 : 0);
        content.setLineDashPattern(dash(brush.dash()), 0);
    }

    private float[] dash(String lengths) {
        String[] words = lengths.isEmpty() ? new String[0] : lengths.split(" ", -1);
        float[] dash = new float[words.length];
        for (int i = 0; i < words.length; i++) {
            dash[i] = (float) (Double.parseDouble(words[i]) * scale);
        }
        return dash;
    }

    PDColor colour(String hex) {
        return faint(hex, 1);
    }

    private static PDColor faint(String hex, double strength) {
        float[] parts = new float[3];
        for (int i = 0; i < 3; i++) {
            double share = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            parts[i] = (float) (1 - strength * (1 - share));
        }
        return new PDColor(parts, PDDeviceRGB.INSTANCE);
    }

    /** Fills an area and draws its look's hatch over it. */
    void hatched(Geometry outline, Look look) throws IOException {
        Ink ink = look.ink();
        content.saveGraphicsState();
        trace(outline);
        content.clipEvenOdd();
        trace(outline);
        content.setNonStrokingColor(colour(ink.fill().light()));
        content.fillEvenOdd();
        Envelope box = outline.getEnvelopeInternal();
        if (ink.hatch() == Ink.Hatch.SLANT) {
            slants(box, ink.stroke().light());
        } else {
            dots(box, ink.stroke().light());
        }
        content.restoreGraphicsState();
    }

    private void slants(Envelope box, String colour) throws IOException {
        double step = Math.max(HATCH * scale * Math.sqrt(2), (box.getWidth() + box.getHeight()) / MOST);
        content.setStrokingColor(faint(colour, 0.45));
        content.setLineWidth((float) (1.6 * scale));
        content.setLineDashPattern(new float[0], 0);
        double first = Math.floor((box.getMinX() - box.getMaxY()) / step) * step;
        for (double start = first; start < box.getMaxX() - box.getMinY(); start += step) {
            move(new Coordinate(start + box.getMinY(), box.getMinY()));
            line(new Coordinate(start + box.getMaxY(), box.getMaxY()));
        }
        content.stroke();
    }

    /** Dots are lines without length that end round. */
    private void dots(Envelope box, String colour) throws IOException {
        double step = Math.max(HATCH * scale * 0.9, Math.max(box.getWidth(), box.getHeight()) / MOST * 4);
        content.setStrokingColor(colour(colour));
        content.setLineWidth((float) (2.2 * scale));
        content.setLineCapStyle(1);
        content.setLineDashPattern(new float[] {0, (float) step}, 0);
        int row = 0;
        for (double y = box.getMinY(); y < box.getMaxY(); y += step / 2 * Math.sqrt(3)) {
            move(new Coordinate(box.getMinX() + (row++ % 2) * step / 2, y));
            line(new Coordinate(box.getMaxX(), y));
        }
        content.stroke();
    }
}
