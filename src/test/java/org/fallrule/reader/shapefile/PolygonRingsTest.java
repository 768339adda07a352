package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fallrule.reader.shapefile.Content.polygon;
import static org.fallrule.reader.shapefile.Content.reversed;
import static org.fallrule.reader.shapefile.Content.square;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.impl.PackedCoordinateSequence;

class PolygonRingsTest {
    @TempDir
    Path folder = Path.of("");

    private Made made = new Made(folder);

    @BeforeEach
    void startInTheFolder() {
        made = new Made(folder);
    }

    @Test
    void aRingInARingIsAHole() {
        Geometry lot = made.shapes(5, polygon(square(0, 0, 10), reversed(square(2, 2, 3))))
                .firstShape();

        assertThat(lot.toText()).isEqualTo("POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 5 2, 5 5, 2 5, 2 2))");
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aHoleWoundAsAShellIsAHoleAndNoted() {
        Geometry lot =
                made.shapes(5, polygon(square(0, 0, 10), square(2, 2, 3))).firstShape();

        assertThat(lot.getArea()).isEqualTo(100 - 9);
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its ring 2 is wound as a shell but lies as a hole; "
                        + "read as it lies; check the polygon's area");
    }

    @Test
    void aShellWoundAsAHoleIsAShellAndNoted() {
        Geometry lot = made.shapes(5, polygon(square(0, 0, 10), reversed(square(20, 0, 3))))
                .firstShape();

        assertThat(lot.getArea()).isEqualTo(100 + 9);
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its ring 2 is wound as a hole but lies as a shell; "
                        + "read as it lies; check the polygon's area");
    }

    @Test
    void ringsThatAreAllWoundTheOtherWayRoundNeedNoNote() {
        Geometry lot = made.shapes(5, polygon(reversed(square(0, 0, 10)), square(2, 2, 3)))
                .firstShape();

        assertThat(lot.getArea()).isEqualTo(100 - 9);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void anIslandInALakeIsAnotherShell() {
        Geometry lot = made.shapes(
                        5, polygon(square(4, 4, 2), reversed(square(2, 2, 6)), square(0, 0, 10), square(20, 0, 1)))
                .firstShape();

        assertThat(lot.toText())
                .isEqualTo("MULTIPOLYGON (((4 4, 4 6, 6 6, 6 4, 4 4)), "
                        + "((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 8 2, 8 8, 2 8, 2 2)), "
                        + "((20 0, 20 1, 21 1, 21 0, 20 0)))");
        assertThat(lot.isValid()).isTrue();
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aHoleThatTouchesItsShellInAPointIsAHole() {
        double[] touching = {0, 5, 4, 3, 4, 7, 0, 5};

        Geometry lot = made.shapes(5, polygon(square(0, 0, 10), touching)).firstShape();

        assertThat(lot.getGeometryType()).isEqualTo("Polygon");
        assertThat(lot.getArea()).isEqualTo(100 - 8);
        assertThat(lot.isValid()).isTrue();
    }

    @Test
    void aRingThatFillsANotchFromOutsideIsAShell() {
        double[] notched = {0, 0, 0, 10, 4, 10, 4, 5, 6, 5, 6, 10, 10, 10, 10, 0, 0, 0};
        double[] filling = {4, 5, 4, 10, 6, 10, 6, 5, 4, 5};

        assertThat(made.shapes(5, polygon(notched, filling)).firstShape().getArea())
                .isEqualTo(100);
    }

    @Test
    void aRingWithAllItsCornersOnAnotherIsAHoleWhenItsSidesRunInside() {
        double[] diamond = {0, 5, 5, 0, 10, 5, 5, 10, 0, 5};

        assertThat(made.shapes(5, polygon(square(0, 0, 10), diamond))
                        .firstShape()
                        .getArea())
                .isEqualTo(100 - 50);
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void ringsTooEntangledForTheBoundedSearchAreRefused() {
        Ring[] rings = {
            new Ring(line(square(0, 0, 10)), 1), new Ring(line(square(1, 1, 8)), 2), new Ring(line(square(2, 2, 6)), 3)
        };
        Place lot = Place.of("lots.shp").feature("feature 4");

        new RingNesting(new Findings(), 53).nest(rings, lot);
        assertThatThrownBy(() -> new RingNesting(new Findings(), 51).nest(rings, lot))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("lots.shp: feature 4: its rings are too many and too long to find which lies in which; "
                        + "split the feature into several, or simplify its outline");
    }

    @Test
    void aRingThatRepeatsAnotherIsKeptAndNoted() {
        Geometry lot =
                made.shapes(5, polygon(square(0, 0, 10), square(0, 0, 10))).firstShape();

        assertThat(lot.getNumGeometries()).isEqualTo(2);
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its ring 1 runs along ring 2; read as standing beside it; "
                        + "redraw the rings so that they do not overlap");
    }

    @Test
    void aHoleThatSticksOutOfItsShellIsAHoleAndNoted() {
        double[] gable = {0, 0, 5, 10, 10, 0, 0, 0};
        double[] overTheEave = {1, -0.001, 1, 1, 3, 1, 3, 0.5, 1, -0.001};

        assertThat(made.shapes(5, polygon(gable, square(1, 1, 3))).firstShape().getGeometryType())
                .isEqualTo("Polygon");
        assertThat(made.notes())
                .contains("in/marks.shp: feature 1: its ring 2 crosses ring 1; read as lying in it; "
                        + "redraw the rings so that they do not overlap");
        assertThat(made.shapes(5, polygon(gable, overTheEave)).firstShape().getGeometryType())
                .isEqualTo("Polygon");
        assertThat(made.notes())
                .contains("in/marks.shp: feature 1: its ring 2 crosses ring 1; read as lying in it; "
                        + "redraw the rings so that they do not overlap");
    }

    @Test
    void ringsThatOverlapForTheLesserPartStandBesideEachOtherAndAreNoted() {
        double[] overlapping = {9, 9, 12, 20, 20, 12, 18, 11, 9, 9};

        assertThat(made.shapes(5, polygon(square(0, 0, 10), overlapping))
                        .firstShape()
                        .getNumGeometries())
                .isEqualTo(2);
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its ring 2 crosses ring 1; read as standing beside it; "
                        + "redraw the rings so that they do not overlap");
    }

    @Test
    void anOpenRingIsClosedAndNoted() {
        double[] open = {0, 0, 0, 10, 10, 10, 10, 0};

        assertThat(made.shapes(5, polygon(open)).firstShape().toText())
                .isEqualTo("POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0))");
        assertThat(made.notes())
                .containsExactly("in/marks.shp: feature 1: its ring 1 is not closed: it begins and ends 10.0 apart; "
                        + "it was closed by a straight line; close it in the layer");
    }

    @Test
    void aRingOfTooFewPointsIsRefused() {
        double[] flat = {0, 0, 5, 5, 0, 0};
        double[] openFlat = {0, 0, 5, 5};

        assertThat(made.shapes(5, polygon(square(0, 0, 9), flat), polygon(openFlat), polygon(new double[] {1, 1}))
                        .refusal())
                .containsExactly(
                        "in/marks.shp: feature 1: its ring 2 has 3 points; wanted 4 or more, "
                                + "the last the same as the first; draw it whole or take the ring away",
                        "in/marks.shp: feature 2: its ring 1 has 2 points; wanted 4 or more, "
                                + "the last the same as the first; draw it whole or take the ring away",
                        "in/marks.shp: feature 3: its ring 1 has 1 points; wanted 4 or more, "
                                + "the last the same as the first; draw it whole or take the ring away");
    }

    @Property(tries = 200)
    void nestedSquaresMakeTheSameLandInWhateverOrderAndWinding(@ForAll long seed) {
        List<double[]> rings = Arrays.asList(
                square(0, 0, 100),
                square(10, 10, 80),
                square(20, 20, 20),
                square(22, 22, 10),
                square(60, 60, 20),
                square(200, 0, 10),
                square(202, 2, 2),
                square(206, 6, 2));
        Random random = new Random(seed);
        Collections.shuffle(rings, random);
        LinearRing[] lines = rings.stream()
                .map(ring -> random.nextBoolean() ? ring : reversed(ring))
                .map(PolygonRingsTest::line)
                .toArray(LinearRing[]::new);

        Geometry land =
                new PolygonAssembler(new GeometryFactory(), new Findings()).assemble(lines, Place.of("marks.shp"));

        assertThat(land.isValid()).isTrue();
        assertThat(land.getNumGeometries()).isEqualTo(4);
        assertThat(land.getArea()).isEqualTo(10000 - 6400 + 400 - 100 + 400 + 100 - 4 - 4);
    }

    @Test
    @Timeout(60)
    void twentyThousandRingsSideBySideDoNotHoldUpTheReading() throws IOException {
        double[][] rings = new double[20_000][];
        Arrays.setAll(rings, index -> square(index * 2.0, 0, 1));
        made.shapes(5, polygon(rings));

        assertThat(Files.size(folder.resolve("marks.shp"))).isGreaterThan(1 << 20);
        assertThat(made.firstShape().getNumGeometries()).isEqualTo(20_000);
    }

    private static LinearRing line(double[] ring) {
        return new GeometryFactory().createLinearRing(new PackedCoordinateSequence.Double(ring, 2, 0));
    }
}
