package org.fallrule.reader.raster;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;

/**
 * An ESRI ASCII grid: a header of words and numbers, then heights from the upper left, row by row (the format as Esri's
 * documentation of "ASCII to Raster" gives it, from memory).
 */
final class AsciiGridFile implements RasterFile {
    private final Path file;
    private final Place where;
    private final AsciiGridHeader header;

    private AsciiGridFile(Path file, Place where) throws IOException {
        this.file = file;
        this.where = where;
        try (AsciiGridWords words = new AsciiGridWords(file, where)) {
            this.header = AsciiGridHeader.read(words);
        }
        checkSize(Files.size(file));
    }

    static AsciiGridFile open(Path file, Place where) {
        try {
            return new AsciiGridFile(file, where);
        } catch (IOException e) {
            throw new UnusableInput(where, "cannot be read: " + e.getMessage());
        }
    }

    /** A value and the blank after it take two bytes at least. */
    private void checkSize(long bytes) {
        if ((double) header.columns() * header.rows() > (bytes + 1) / 2.0) {
            throw new UnusableInput(
                    where,
                    "claims " + header.columns() + " columns and " + header.rows() + " rows, but has room for "
                            + (bytes + 1) / 2 + " values at most; it seems cut off, or mend ncols and nrows");
        }
    }

    @Override
    public int columns() {
        return header.columns();
    }

    @Override
    public int rows() {
        return header.rows();
    }

    @Override
    public Placement placement() {
        return header.placement();
    }

    @Override
    public Optional<String> crs() {
        return Optional.empty();
    }

    @Override
    public Optional<Unit> heightUnit() {
        return Optional.empty();
    }

    @Override
    public Optional<String> heightDatum() {
        return Optional.empty();
    }

    @Override
    public List<Fault> notes() {
        return List.of();
    }

    @Override
    public double[] heights(CellWindow window) {
        double[] heights = new double[window.columns() * window.rows()];
        try (AsciiGridWords words = new AsciiGridWords(file, where)) {
            double value = AsciiGridHeader.read(words).firstValue();
            for (int row = 0; row < header.rows(); row++) {
                for (int column = 0; column < header.columns(); column++) {
                    int i = row - window.row();
                    int j = column - window.column();
                    if (i >= 0 && i < window.rows() && j >= 0 && j < window.columns()) {
                        heights[i * window.columns() + j] = value == header.none() ? Double.NaN : value;
                    }
                    if (row < header.rows() - 1 || column < header.columns() - 1) {
                        value = words.number();
                    }
                }
            }
            words.refuseMore();
            return heights;
        } catch (IOException e) {
            throw new UnusableInput(where, "cannot be read: " + e.getMessage());
        }
    }
}
