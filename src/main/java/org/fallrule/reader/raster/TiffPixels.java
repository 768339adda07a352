package org.fallrule.reader.raster;

import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageReader;
import it.geosolutions.imageioimpl.plugins.tiff.TIFFImageReaderSpi;
import java.awt.Rectangle;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import javax.imageio.ImageReadParam;
import javax.imageio.stream.FileImageInputStream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The pixels of a TIFF file, decoded by the reader that GeoTools' own GeoTIFF reader stands on. It is used directly as it
 * reads exactly the wanted cells and looks up no coordinate reference system.
 */
final class TiffPixels {
    private static final int ROWS_AT_ONCE = 256;

    private TiffPixels() {}

    static double[] read(Path file, CellWindow window, Place where) {
        TIFFImageReader reader = new TIFFImageReader(new TIFFImageReaderSpi());
        try (FileImageInputStream stream = new FileImageInputStream(file.toFile())) {
            reader.setInput(stream, false, true);
            return read(reader, window);
        } catch (IOException | RuntimeException e) {
            // Broken compressed data ends in any of these.
            throw new UnusableInput(
                    where,
                    "its pixels cannot be decoded ("
                            + Objects.requireNonNullElse(
                                    e.getMessage(), e.getClass().getSimpleName())
                            + "); give the GeoTIFF again, written as deflate, LZW, ZSTD or uncompressed");
        } finally {
            reader.dispose();
        }
    }

    /** In bands of rows, so that the decoder's own picture stays small beside the result. */
    private static double[] read(TIFFImageReader reader, CellWindow window) throws IOException {
        double[] values = new double[window.columns() * window.rows()];
        for (int row = 0; row < window.rows(); row += ROWS_AT_ONCE) {
            int rows = Math.min(ROWS_AT_ONCE, window.rows() - row);
            ImageReadParam part = reader.getDefaultReadParam();
            part.setSourceRegion(new Rectangle(window.column(), window.row() + row, window.columns(), rows));
            Raster pixels = reader.read(0, part).getRaster();
            if (pixels.getWidth() != window.columns() || pixels.getHeight() != rows) {
                throw new IOException("fewer pixels than wanted");
            }
            double[] read =
                    pixels.getSamples(pixels.getMinX(), pixels.getMinY(), window.columns(), rows, 0, (double[]) null);
            System.arraycopy(read, 0, values, row * window.columns(), read.length);
        }
        return values;
    }
}
