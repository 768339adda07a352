package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.locationtech.jts.geom.Geometry;

/** The {@code .shp} file: a header and then one record for each shape. */
final class MainFile {
    private final ByteBuffer bytes;
    private final Place place;
    private final RecordFrames frames;
    private final ShapeRecord shapes;

    private MainFile(ByteBuffer bytes, Place place, RecordFrames frames, ShapeRecord shapes) {
        this.bytes = bytes;
        this.place = place;
        this.frames = frames;
        this.shapes = shapes;
    }

    /**
     * Reads the header and finds the records.
     *
     * @throws UnusableInput when the header is of another file or a record is cut off
     */
    static MainFile open(ShownFile shp, Place place, Findings findings) {
        ByteBuffer bytes = shp.bytes();
        MainFileHeader header = MainFileHeader.read(bytes, place, findings);
        RecordFrames frames = RecordFrames.scan(bytes, place, findings);
        return new MainFile(bytes, place, frames, new ShapeRecord(header.type(), findings));
    }

    RecordFrames frames() {
        return frames;
    }

    /**
     * The shape of the record of that index, counted from 0; empty for a null shape.
     *
     * @throws UnusableInput naming the feature when its content is no shape
     */
    Optional<Geometry> shape(int index) {
        ByteBuffer content = bytes.slice(frames.contentStart(index), frames.contentLength(index))
                .order(ByteOrder.LITTLE_ENDIAN);
        return shapes.read(new RecordContent(content, place.feature(RecordFrames.label(index))));
    }
}
