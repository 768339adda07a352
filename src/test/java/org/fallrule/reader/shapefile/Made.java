package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawLayer;
import org.locationtech.jts.geom.Geometry;

/** A folder with a {@code marks.shp} that is built byte by byte, and companions as wanted. */
record Made(Path folder) {

    static byte[] mainFile(int type, byte[]... contents) {
        Bytes records = new Bytes();
        int number = 1;
        for (byte[] content : contents) {
            records.big(number++, content.length / 2).raw(content);
        }
        return new Bytes()
                .big(9994, 0, 0, 0, 0, 0, (100 + records.size()) / 2)
                .little(1000, type)
                .raw(new byte[64])
                .raw(records.toArray())
                .toArray();
    }

    /** Writes the main file and a table with as many rows. */
    Made shapes(int type, byte[]... contents) {
        Table table = Table.of("id", 'N', 4, 0);
        Collections.nCopies(contents.length, "   7").forEach(table::row);
        return with("marks.shp", mainFile(type, contents)).with("marks.dbf", table.toArray());
    }

    /** Writes as many points as the table has rows, and the table. */
    Made table(int rows, Table table) {
        byte[][] points = Collections.nCopies(rows, Content.point(1, 2)).toArray(new byte[0][]);
        return with("marks.shp", mainFile(1, points)).with("marks.dbf", table.toArray());
    }

    Made with(String file, byte[] bytes) {
        try {
            Files.write(folder.resolve(file), bytes);
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    Made without(String file) {
        try {
            Files.delete(folder.resolve(file));
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    RawLayer read() {
        return ShapefileReader.read(folder.resolve("marks.shp"), "in/marks.shp");
    }

    Geometry firstShape() {
        return read().features().get(0).geometry().orElseThrow();
    }

    List<String> notes() {
        return read().notes().stream().map(Fault::toString).toList();
    }

    /** What the refusal says, one string for each fault. */
    List<String> refusal() {
        UnusableInput refused = catchThrowableOfType(UnusableInput.class, this::read);
        return Objects.requireNonNull(refused, "it was read").faults().stream()
                .map(Fault::toString)
                .toList();
    }
}
