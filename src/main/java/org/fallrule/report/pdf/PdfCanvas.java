package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.fallrule.report.map.Canvas;
import org.fallrule.report.map.Ink;
import org.fallrule.report.map.Look;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Paints on a page. At full size a pixel of the sheet is three quarters of a point, as it is on a page of the web. */
final class PdfCanvas implements Canvas {
    /** Points to a pixel: 72 points and 96 pixels make an inch. */
    static final double POINTS = 0.75;

    private static final double SLANT = 0.2;

    private final Strokes strokes;
    private final PDPageContentStream content;
    private final Typeface regular;
    private final Typeface bold;
    private final double scale;
    private final List<Link> links = new ArrayList<>();
    private AffineTransformation onPage;
    private double degrees;

    /**
     * @param left where the sheet's left edge lies on the page, in points
     * @param top where its upper edge lies, in points from the page's lower edge
     * @param scale points to a pixel
     */
    PdfCanvas(PDPageContentStream content, Typeface regular, Typeface bold, double left, double top, double scale) {
        this.content = content;
        this.scale = scale;
        this.strokes = new Strokes(content, scale);
        this.regular = regular;
        this.bold = bold;
        this.onPage = new AffineTransformation(scale, 0, left, 0, -scale, top);
    }

    private static void write(Strokes.Piece piece) {
        Strokes.write(piece);
    }

    /** Paints what must not reach over a box. */
    void clipped(double width, double height, Runnable content) {
        write(() -> {
            this.content.saveGraphicsState();
            strokes.trace(onPage.transform(new GeometryFactory().toGeometry(new Envelope(0, width, 0, height))));
            this.content.clipEvenOdd();
        });
        content.run();
        write(this.content::restoreGraphicsState);
    }

    @Override
    public void area(Look look, Geometry px) {
        if (px.isEmpty()) {
            return;
        }
        Geometry outline = onPage.transform(px);
        write(() -> {
            Brush brush = Brush.of(look);
            if (look.ink().hatch() != Ink.Hatch.NONE) {
                strokes.hatched(outline, look);
                brush = Brush.of(look.cssClass() + " m-edge");
            }
            strokes.paint(brush, true, () -> strokes.trace(outline));
        });
    }

    @Override
    public void shape(String style, Geometry px) {
        if (px.isEmpty()) {
            return;
        }
        boolean closed = px.getDimension() == 2;
        write(() -> strokes.paint(Brush.of(style), closed, () -> strokes.trace(onPage.transform(px))));
    }

    @Override
    public void path(String style, Coordinate at, double turned, String data) {
        AffineTransformation placed = AffineTransformation.rotationInstance(Math.toRadians(turned))
                .translate(at.x, at.y)
                .compose(onPage);
        Brush brush = Brush.of(style);
        write(() -> {
            if (brush.halo()) {
                strokes.trace(data, placed);
                strokes.stroke(brush);
                strokes.trace(data, placed);
                strokes.fill(brush);
            } else {
                strokes.paint(brush, true, () -> strokes.trace(data, placed));
            }
        });
    }

    @Override
    public void circle(String style, Coordinate at, double radius) {
        Coordinate middle = onPage.transform(at, new Coordinate());
        write(() -> strokes.paint(Brush.of(style), true, () -> strokes.circle(middle, radius * scale)));
    }

    @Override
    public void box(String style, Coordinate corner, double width, double height) {
        Envelope box = new Envelope(corner.x, corner.x + width, corner.y, corner.y + height);
        shape(style, new GeometryFactory().toGeometry(box));
    }

    @Override
    public void text(String style, String words, Coordinate at, Anchor anchor) {
        Brush brush = Brush.of(style);
        Typeface face = brush.bold() ? bold : regular;
        String shown = face.boxed(words);
        double width = face.width(shown, brush.font());
        double back = switch (anchor) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        Coordinate start = onPage.transform(new Coordinate(at.x - back, at.y), new Coordinate());
        double size = brush.font() * scale;
        write(() -> {
            if (brush.halo()) {
                strokes.prepare(brush);
                show(face, size, start, brush.slanted(), RenderingMode.STROKE, shown);
            }
            content.setNonStrokingColor(strokes.colour(brush.fill()));
            show(face, size, start, brush.slanted(), RenderingMode.FILL, shown);
        });
    }

    private void show(Typeface face, double size, Coordinate at, boolean slanted, RenderingMode mode, String words)
            throws IOException {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = -Math.sin(Math.toRadians(degrees));
        double lean = slanted ? SLANT : 0;
        content.beginText();
        content.setRenderingMode(mode);
        content.setFont(face.font(), (float) size);
        content.setTextMatrix(new Matrix(
                (float) cos, (float) sin, (float) (lean * cos - sin), (float) (lean * sin + cos), (float) at.x, (float)
                        at.y));
        content.showText(words);
        content.endText();
    }

    @Override
    public void placed(String name, Coordinate at, double turned, Runnable content) {
        AffineTransformation before = onPage;
        onPage = AffineTransformation.rotationInstance(Math.toRadians(turned))
                .translate(at.x, at.y)
                .compose(before);
        degrees += turned;
        content.run();
        degrees -= turned;
        onPage = before;
    }

    @Override
    public void layer(String name, Runnable content) {
        content.run();
    }

    @Override
    public void titled(String title, Runnable content) {
        content.run();
    }

    @Override
    public void link(int finding, String title, Coordinate middle, double radius, Runnable content) {
        content.run();
        Coordinate onSheet = onPage.transform(middle, new Coordinate());
        links.add(new Link(finding, title, onSheet, radius * scale));
    }

    /**
     * A place on the page that leads to a finding.
     *
     * @param finding its number
     * @param title what it says
     * @param middle in points from the page's lower left corner
     * @param radius in points
     */
    record Link(int finding, String title, Coordinate middle, double radius) {}

    /** What was painted that leads to findings. */
    List<Link> links() {
        return links;
    }
}
