package org.fallrule.reader.raster;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.locationtech.jts.geom.util.AffineTransformation;

/** A GeoTIFF (OGC 19-008r4, 2019) with one band of heights. */
final class TiffFile implements RasterFile {
    private static final Pattern ITEM = Pattern.compile("<Item([^>]*)>\\s*([^<\\s]+)\\s*</Item>");

    private final Path file;
    private final Place where;
    private final TiffDirectory tiff;
    private final TiffLayout layout;
    private final GeoKeys keys;
    private final Placement placement;

    private TiffFile(Path file, Place where) throws IOException {
        this.file = file;
        this.where = where;
        this.tiff = TiffDirectory.read(file);
        this.layout = new TiffLayout(tiff);
        this.keys = new GeoKeys(tiff);
        this.placement = Placement.of(gridToCrs());
    }

    static TiffFile open(Path file, Place where) {
        try {
            return new TiffFile(file, where);
        } catch (IOException | IllegalArgumentException e) {
            throw new UnusableInput(where, e.getMessage() + "; give the GeoTIFF again");
        }
    }

    /** Section 7.1.2 of the standard: tie points and scale, or a matrix; a pixel is an area unless a key says it is a point. */
    private AffineTransformation gridToCrs() throws IOException {
        double centre = keys.isPixelIsPoint() ? 0 : 0.5;
        double[] matrix = tiff.doubles(TiffTag.MODEL_TRANSFORMATION);
        double[] scale = tiff.doubles(TiffTag.MODEL_PIXEL_SCALE);
        double[] tie = tiff.doubles(TiffTag.MODEL_TIEPOINT);
        if (scale.length >= 2 && tie.length >= 6) {
            return new AffineTransformation(
                    scale[0],
                    0,
                    tie[3] + (centre - tie[0]) * scale[0],
                    0,
                    -scale[1],
                    tie[4] - (centre - tie[1]) * scale[1]);
        }
        if (matrix.length >= 8) {
            return new AffineTransformation(
                    matrix[0],
                    matrix[1],
                    matrix[3] + centre * (matrix[0] + matrix[1]),
                    matrix[4],
                    matrix[5],
                    matrix[7] + centre * (matrix[4] + matrix[5]));
        }
        throw new IOException("has no place on earth (no tie point with scale, and no matrix)");
    }

    @Override
    public int columns() {
        return layout.columns();
    }

    @Override
    public int rows() {
        return layout.rows();
    }

    @Override
    public Placement placement() {
        return placement;
    }

    @Override
    public Optional<String> crs() {
        return keys.crs();
    }

    @Override
    public Optional<Unit> heightUnit() {
        return keys.heightUnit();
    }

    @Override
    public Optional<String> heightDatum() {
        return keys.heightDatum();
    }

    @Override
    public List<Fault> notes() {
        return keys.isOwnProjection()
                ? List.of(new Fault(
                        where,
                        "describes a projection of its own number by number, which is not read; supply its .prj, or an"
                                + " EPSG code in the file"))
                : List.of();
    }

    @Override
    public double[] heights(CellWindow window) {
        double[] heights = TiffPixels.read(file, window, where);
        double none = none();
        double scale = item("scale").orElse(1.0);
        double offset = item("offset").orElse(0.0);
        double belowZero = layout.isUnsigned32() ? 0x1p32 : 0;
        for (int i = 0; i < heights.length; i++) {
            double value = heights[i] < 0 ? heights[i] + belowZero : heights[i];
            heights[i] = value == none ? Double.NaN : value * scale + offset;
        }
        return heights;
    }

    /** The value that stands for none, NaN when there is no such value. */
    private double none() {
        double none = tiff.text(TiffTag.GDAL_NODATA).flatMap(TiffFile::number).orElse(Double.NaN);
        return layout.isSingle() ? (float) none : none;
    }

    /** Scale or offset of the values, from the file's XML of items. */
    private Optional<Double> item(String role) {
        Matcher items = ITEM.matcher(tiff.text(TiffTag.GDAL_METADATA).orElse(""));
        while (items.find()) {
            if (items.group(1).contains("role=\"" + role + "\"")) {
                return number(items.group(2));
            }
        }
        return Optional.empty();
    }

    private static Optional<Double> number(String text) {
        try {
            return Optional.of(Double.parseDouble(text.strip()));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
