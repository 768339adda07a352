package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class CorridorTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Geometry part(String of, double metres, String line) {
        return new Corridor(wkt(of), metres).partOf(wkt(line));
    }

    @Test
    void aLineAcrossIsInItForTwiceItsReach() {
        assertThat(part("LINESTRING (0 0, 10 0)", 2, "LINESTRING (5 -7, 5 9)").toText())
                .isEqualTo("LINESTRING (5 -2, 5 2)");
    }

    /** Past the end of the first line its reach is a circle: 3, 4, 5. */
    @Test
    void pastTheEndItIsRound() {
        assertThat(part("LINESTRING (0 0, 10 0)", 5, "LINESTRING (13 -9, 13 9)").toText())
                .isEqualTo("LINESTRING (13 -4, 13 4)");
    }

    @Test
    void aBendInItStaysInThePart() {
        assertThat(part("LINESTRING (0 0, 10 0)", 2, "LINESTRING (4 8, 4 1, 8 1, 8 8)")
                        .toText())
                .isEqualTo("LINESTRING (4 2, 4 1, 8 1, 8 2)");
    }

    @Test
    void aLineThatLeavesAndComesBackHasTwoParts() {
        Geometry part = part("LINESTRING (0 0, 20 0)", 1, "LINESTRING (2 -3, 2 3, 9 3, 9 -3)");

        assertThat(part.toText()).isEqualTo("MULTILINESTRING ((2 -1, 2 1), (9 1, 9 -1))");
    }

    @Test
    void aLineAlongIsInItAsFarAsTheFirstGoesAndRoundItsEnds() {
        Geometry part = part("LINESTRING (0 0, 4 0, 9 0)", 5, "LINESTRING (-20 3, 30 3)");

        assertThat(part.equalsExact(wkt("LINESTRING (-4 3, 13 3)"), 1e-9)).isTrue();
    }

    @Test
    void aLineAlongAtTheVeryReachIsInItAndOneFartherOffIsNot() {
        assertThat(part("LINESTRING (0 0, 4 0)", 3, "LINESTRING (-20 3, 30 3)").getLength())
                .isEqualTo(4);
        assertThat(part("LINESTRING (0 0, 4 0)", 3, "LINESTRING (-20 3.000001, 30 3.000001)")
                        .isEmpty())
                .isTrue();
    }

    @Test
    void aPlaceGivenTwiceIsNoSegment() {
        assertThat(part("LINESTRING (0 0, 0 0, 10 0)", 2, "LINESTRING (5 -7, 5 -7, 5 9, 5 9)")
                        .getLength())
                .isEqualTo(4);
        assertThat(part("LINESTRING (0 0, 10 0)", 2, "LINESTRING EMPTY").isEmpty())
                .isTrue();
    }

    /**
     * Held against the general-purpose library's own zone and overlay, which join corners of the zone that lie within a thousandth of
     * the reach of each other; and against its distance, which knows no arcs: a part ends where the line does or at the very reach.
     */
    @Property(tries = 300)
    void itHoldsAsMuchOfALineAsTheLibrarysZoneDoes(
            @ForAll long seed,
            @ForAll @IntRange(min = 2, max = 6) int bends,
            @ForAll @DoubleRange(min = 0.1, max = 30) double metres) {
        Random random = new Random(seed);
        LineString of = wandering(random, bends);
        LineString line = wandering(random, bends);
        Geometry part = new Corridor(of, metres).partOf(line);
        Geometry inside = line.intersection(zone(of, metres * 1.002));
        Geometry well = line.intersection(zone(of, metres * 0.998));

        assertThat(part.getLength()).isBetween(well.getLength() - 1e-9, inside.getLength() + 1e-9);
        for (int i = 0; !part.isEmpty() && i < part.getNumGeometries(); i++) {
            for (Coordinate place : part.getGeometryN(i).getCoordinates()) {
                Geometry point = GEOMETRY.createPoint(place);
                assertThat(of.distance(point)).isLessThanOrEqualTo(metres + 1e-9);
                assertThat(line.distance(point)).isCloseTo(0, within(1e-9));
            }
            for (Coordinate end : ends(part.getGeometryN(i), line)) {
                assertThat(of.distance(GEOMETRY.createPoint(end))).isCloseTo(metres, within(1e-9));
            }
        }
    }

    /** Its ends but for those of the line that it is part of. */
    private static List<Coordinate> ends(Geometry part, LineString line) {
        List<Coordinate> ends =
                new ArrayList<>(List.of(part.getCoordinates()[0], part.getCoordinates()[part.getNumPoints() - 1]));
        ends.removeAll(List.of(line.getCoordinateN(0), line.getCoordinateN(line.getNumPoints() - 1)));
        return ends;
    }

    /** The library first takes bends out of the line that come to less than a hundredth of the reach, unless told not to. */
    private static Geometry zone(LineString of, double metres) {
        BufferParameters asItIs = new BufferParameters(256);
        asItIs.setSimplifyFactor(0);
        return BufferOp.bufferOp(of, metres, asItIs);
    }

    private static LineString wandering(Random random, int bends) {
        Coordinate[] places = new Coordinate[bends];
        for (int i = 0; i < bends; i++) {
            places[i] = new Coordinate(random.nextDouble(0, 100), random.nextDouble(0, 100));
        }
        return GEOMETRY.createLineString(places);
    }
}
