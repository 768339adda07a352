package org.fallrule.check.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** All in metres. */
class ReachBeyondTest {
    private static final String LOT = "POLYGON ((0 0, 30 0, 30 30, 0 30, 0 0))";

    private static Geometry wkt(String text) {
        try {
            return new WKTReader().read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static double reach(String geometry, String area) {
        return ReachBeyond.of(wkt(geometry), wkt(area));
    }

    @Test
    void insideOrOnTheEdgeNothingReachesOut() {
        assertThat(reach("POINT (3 3)", LOT)).isZero();
        assertThat(reach("LINESTRING (0 0, 30 30)", LOT)).isZero();
        assertThat(reach(LOT, LOT)).isZero();
    }

    @Test
    void aPointReachesAsFarAsItLiesOutside() {
        assertThat(reach("POINT (33 34)", LOT)).isCloseTo(5, within(1e-9));
    }

    @Test
    void severalPointsReachAsFarAsTheFarthest() {
        assertThat(reach("MULTIPOINT ((3 3), (40 3), (3 -2))", LOT)).isCloseTo(10, within(1e-9));
    }

    @Test
    void aLineBetweenTwoAreasIsFarthestInBetween() {
        String two = "MULTIPOLYGON (((0 0, 10 0, 10 10, 0 10, 0 0)), ((20 0, 40 0, 40 10, 20 10, 20 0)))";

        assertThat(reach("LINESTRING (5 5, 30 5)", two)).isCloseTo(5, within(1e-3));
    }

    @Test
    void aLongLineBesideTheAreaIsAsFarAsItIs() {
        assertThat(reach("LINESTRING (-100 -7, 100 -7)", LOT)).isCloseTo(Math.hypot(100, 7), within(1e-3));
        assertThat(reach("LINESTRING (0 -7, 30 -7)", LOT)).isCloseTo(7, within(1e-3));
    }

    @Test
    void anAreaReachesAsFarAsItsFarthestCorner() {
        assertThat(reach("POLYGON ((20 20, 34 20, 34 33, 20 33, 20 20))", LOT)).isCloseTo(5, within(1e-3));
    }

    @Property(tries = 300)
    void aBuildingWithItsWallOnTheLotLineReachesNoFartherAtAnyTurn(
            @ForAll @DoubleRange(min = 0, max = 6.3) double angle) {
        AffineTransformation turn = AffineTransformation.rotationInstance(angle);
        Geometry building = turn.transform(wkt("POLYGON ((0 5, 10 5, 10 15, 0 15, 0 5))"));

        assertThat(ReachBeyond.of(building, turn.transform(wkt(LOT)))).isLessThan(1e-3);
    }

    @Test
    void aLineThatIsFarthestOutInItsLaterHalfIsSoughtThere() {
        // opposite walls 6 m off the line at 30 and 4 m off it at 12: the farthest lies between 12 and 30
        String around = "MULTIPOLYGON (((0 -1, 4 -1, 4 1, 0 1, 0 -1)), ((10 4, 14 4, 14 5, 10 5, 10 4)),"
                + " ((30 -1, 40 -1, 40 1, 30 1, 30 -1)))";

        assertThat(reach("LINESTRING (0 0, 40 0)", around)).isCloseTo(8.5, within(1e-3));
        assertThat(reach("LINESTRING (40 0, 0 0)", around)).isCloseTo(8.5, within(1e-3));
    }
}
