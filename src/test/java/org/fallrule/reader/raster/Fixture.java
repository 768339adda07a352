package org.fallrule.reader.raster;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** The rasters that make_fixtures.py made, and what GDAL read from them. */
final class Fixture {
    static final Place WHERE = Place.of("test");

    /** A reading of GDAL's: a position in the raster's system, and the height there; NaN for none. */
    record Reading(Coordinate position, double height) {
        boolean isNone() {
            return Double.isNaN(height);
        }
    }

    private Fixture() {}

    static Path path(String name) {
        URL url = Objects.requireNonNull(Fixture.class.getResource(name), name);
        try {
            return Path.of(url.toURI());
        } catch (URISyntaxException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }

    static List<Reading> readings(String name) throws IOException {
        return Files.readAllLines(path(name + ".txt")).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split("\t", 3))
                .map(cells -> new Reading(
                        new Coordinate(Double.parseDouble(cells[0]), Double.parseDouble(cells[1])),
                        cells[2].equals("none") ? Double.NaN : Double.parseDouble(cells[2])))
                .toList();
    }

    /** A frame whose origin is at a position of a system. */
    static LocalFrame frame(String crs, double x, double y) {
        Coordinate lonLat = CoordinateSystem.of(crs, WHERE).toLonLat(new Coordinate(x, y), WHERE);
        return LocalFrame.at(lonLat.x, lonLat.y);
    }

    static Coordinate local(CoordinateSystem system, LocalFrame frame, Coordinate position) {
        return frame.toLocal(system.toLonLat(position, WHERE));
    }

    static RasterReader.Reading read(Path file, String crs, LocalFrame frame, Envelope around) {
        return RasterReader.read(
                file, file.getFileName().toString(), Optional.of(crs), Optional.of(Unit.ELEVATION_FOOT), frame, around);
    }

    /** A box of so many metres to each side of the frame's origin. */
    static Envelope around(double metres) {
        return new Envelope(-metres, metres, -metres, metres);
    }
}
