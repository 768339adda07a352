package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.raster.RasterReader;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Outside source: real heights that others published, and what GDAL 3.6.2 makes of them; {@code README.md} beside the data
 * tells where they come from, {@code make_readings.py} how GDAL was asked.
 */
class OpenDataTest {
    private static final Place WHERE = Place.of("test");
    private static final CoordinateSystem UTM = CoordinateSystem.of("EPSG:32725", WHERE);
    /** In the middle of the raster. */
    private static final LocalFrame FRAME = frame(new Coordinate(293096, 9116621));

    /** The plan distance of neighbouring cell centres, and the steepest rise between two of them, read off the file. */
    private static final double CELL = 89.994067349451;

    private static final double STEEPEST = 40 / CELL;

    private static LocalFrame frame(Coordinate middle) {
        Coordinate lonLat = UTM.toLonLat(middle, WHERE);
        return LocalFrame.at(lonLat.x, lonLat.y);
    }

    private static Coordinate local(String x, String y) {
        return FRAME.toLocal(UTM.toLonLat(new Coordinate(Double.parseDouble(x), Double.parseDouble(y)), WHERE));
    }

    private static Path path(String name) {
        try {
            return Path.of(Objects.requireNonNull(OpenDataTest.class.getResource(name), name)
                    .toURI());
        } catch (URISyntaxException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }

    private static List<String[]> rows(String name, String separator) throws IOException {
        return Files.readAllLines(path(name)).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(separator, -1))
                .toList();
    }

    private static GroundSurface olinda() {
        return new RasterGround(RasterReader.read(
                        path("olinda.asc"),
                        "olinda.asc",
                        Optional.empty(),
                        Optional.of(Unit.ELEVATION_METRE),
                        FRAME,
                        new Envelope(-3000, 3000, -3000, 3000))
                .heights());
    }

    /**
     * GDAL's target cell is 2e-6 of a cell wide and the local frame keeps places to 1e-4 m over this extent, of which heights
     * change by less than half a metre a metre.
     */
    @Test
    void heightsBetweenTheCellsOfTheHillsOfOlindaAreThoseOfGdal() throws IOException {
        GroundSurface ground = olinda();
        List<String[]> readings = rows("olinda_heights.txt", "\t");

        assertThat(readings).hasSize(60);
        for (String[] reading : readings) {
            assertThat(ground.elevationAt(local(reading[0], reading[1]))
                            .map(Elevation::metres)
                            .orElseThrow())
                    .as(String.join(" ", reading))
                    .isCloseTo(Double.parseDouble(reading[2]), within(2e-4));
        }
    }

    /**
     * At a cell's centre a difference over one cell of the bilinear surface is the central difference of its neighbours, which
     * is what GDAL takes (L. W. Zevenbergen and C. R. Thorne, Earth Surface Processes and Landforms 12, 1987, with their
     * second-order terms left out). The local frame lies turned against the grid by some angle t: then the twist of the four
     * cells around enters, of which each is at most twice the steepest rise S between neighbours, so that each component of
     * the grade is off by no more than t S, and the grade by sqrt 2 of it. The frame's scale differs from the grid's by less
     * than 2e-4. GDAL works in single precision and writes 1e-6 percent and 1e-4 degrees.
     */
    @Test
    void gradesAtTheCellsOfTheHillsOfOlindaAreThoseOfGdal() throws IOException {
        GroundSurface ground = olinda();
        List<String[]> readings = rows("olinda_grades.txt", "\t");
        double turn = turn();

        assertThat(turn).isBetween(0.002, 0.006);
        assertThat(readings).hasSize(120);
        for (String[] reading : readings) {
            double slope = Double.parseDouble(reading[2]) / 100;
            double bearing = reading[3].equals("level") ? 0 : Math.toRadians(Double.parseDouble(reading[3])) + turn;
            Grade found = ground.gradeAt(local(reading[0], reading[1])).orElseThrow();
            double foundBearing = found.downhill().si();
            double apart = Math.hypot(
                    found.slope().ratio() * Math.sin(foundBearing) - slope * Math.sin(bearing),
                    found.slope().ratio() * Math.cos(foundBearing) - slope * Math.cos(bearing));
            assertThat(apart)
                    .as(String.join(" ", reading))
                    .isLessThan(Math.sqrt(2) * turn * STEEPEST + 2e-4 * slope + 1e-6);
        }
    }

    /** The bearing in the local frame of the grid's north. */
    private static double turn() {
        Coordinate from = local("293096", "9116621");
        Coordinate to = local("293096", "9117621");
        return Math.atan2(to.x - from.x, to.y - from.y);
    }

    @Test
    void noRiseBetweenNeighbouringCellsIsSteeperThanTheBoundAssumes() throws IOException {
        List<String[]> rows = Files.readAllLines(path("olinda.asc")).stream()
                .skip(5)
                .map(line -> line.strip().split("\\s+", -1))
                .toList();
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < rows.get(row).length; column++) {
                double here = Double.parseDouble(rows.get(row)[column]);
                double right = column == 0 ? here : Double.parseDouble(rows.get(row)[column - 1]);
                double below = row == 0 ? here : Double.parseDouble(rows.get(row - 1)[column]);
                assertThat(Math.max(Math.abs(here - right), Math.abs(here - below)) / CELL)
                        .isLessThanOrEqualTo(STEEPEST);
            }
        }
    }

    /**
     * Spot heights of Davis (1973), at their scale of 50 ft to the unit. Linear on Delaunay triangles has one answer but where
     * four spots lie on one circle.
     */
    @Test
    void heightsBetweenTheSpotsOfDavisAreThoseOfGdal() throws IOException {
        List<Coordinate> spots = rows("davis_1973.csv", ",").stream()
                .map(cells -> feet(cells[0], cells[1], cells[2]))
                .toList();
        GroundSurface ground = TriangulatedGround.of(spots).orElseThrow();
        List<String[]> readings = rows("davis_1973_linear.txt", "\t");

        assertThat(spots).hasSize(52);
        assertThat(readings).hasSize(24 * 24);
        for (String[] reading : readings) {
            Optional<Double> found =
                    ground.elevationAt(feet(reading[0], reading[1], "0")).map(Elevation::metres);
            if (reading[2].equals("none")) {
                assertThat(found).as(String.join(" ", reading)).isEmpty();
            } else {
                assertThat(found.orElseThrow() / 0.3048)
                        .as(String.join(" ", reading))
                        .isCloseTo(Double.parseDouble(reading[2]), within(1e-6));
            }
        }
    }

    private static Coordinate feet(String x, String y, String z) {
        return new Coordinate(
                Double.parseDouble(x) * 50 * 0.3048,
                Double.parseDouble(y) * 50 * 0.3048,
                Double.parseDouble(z) * 0.3048);
    }
}
