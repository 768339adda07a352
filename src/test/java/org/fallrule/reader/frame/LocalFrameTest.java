package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.PolygonArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class LocalFrameTest {
    private static final Geodesic GRS80 = new Geodesic(6378137.0, 1 / 298.257222101);

    /** Of PROJ 9.1.1: cs2cs +proj=longlat +ellps=GRS80 +to +proj=tmerc +ellps=GRS80 +lon_0=-78.5 +lat_0=... */
    @ParameterizedTest
    @CsvSource({
        "15.0, -78.499, 15.0007, 107.550139, 77.454333",
        "15.0, -77.5, 15.7, 107197.307670, 77709.655414",
        "15.0, -58.5, 20, 2126262.965608, 684052.839419",
        "35.5, -78.499, 35.5007, 90.728604, 77.665296",
        "35.5, -77.5, 36.2, 89936.870133, 78132.921419",
        "35.5, -58.5, 40.5, 1700254.439933, 752058.813303",
        "64.8, -77.5, 65.5, 46290.378819, 78413.998531",
        "64.8, -58.5, 69.8, 759024.834586, 683536.214103",
    })
    void aPlaceIsWhereProjHasIt(double originLat, double lon, double lat, double east, double north) {
        Coordinate local = LocalFrame.at(-78.5, originLat).toLocal(new Coordinate(lon, lat));

        assertThat(local.x).isCloseTo(east, within(1e-6));
        assertThat(local.y).isCloseTo(north, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "17.9, 5",
        "17.9, 200",
        "30, 5",
        "30, 200",
        "35.5, 5",
        "35.5, 40",
        "35.5, 200",
        "48.9, 200",
        "64.8, 5",
        "71.3, 200"
    })
    void distancesOnALotAreThoseOfTheGeodesic(double lat, double metres) {
        LocalFrame frame = LocalFrame.at(-78.5, lat);
        for (int bearing = 0; bearing < 360; bearing += 15) {
            GeodesicData start = GRS80.Direct(lat, -78.5, 250, 150);
            GeodesicData end = GRS80.Direct(start.lat2, start.lon2, bearing, metres);
            Coordinate from = frame.toLocal(new Coordinate(start.lon2, start.lat2));
            Coordinate to = frame.toLocal(new Coordinate(end.lon2, end.lat2));

            assertThat(from.distance(to) / metres).as("bearing %d", bearing).isCloseTo(1, within(1e-8));
        }
    }

    @ParameterizedTest
    @CsvSource({"17.9, 10", "35.5, 10", "35.5, 200", "64.8, 50"})
    void theAreaOfALotIsThatOnTheEllipsoid(double lat, double side) throws ParseException {
        LocalFrame frame = LocalFrame.at(-120.25, lat);
        Geometry lot =
                new WKTReader().read("POLYGON ((0 0, " + side + " 0, " + side + " " + side + ", 0 " + side + ", 0 0))");
        PolygonArea onEllipsoid = new PolygonArea(GRS80, false);
        for (Coordinate corner : frame.toLonLat(lot).getCoordinates()) {
            onEllipsoid.AddPoint(corner.y, corner.x);
        }

        assertThat(lot.getArea() / Math.abs(onEllipsoid.Compute().area)).isCloseTo(1, within(1e-6));
    }

    @Test
    void thereAndBackIsTheSamePlaceToABillionthOfADegree() {
        for (double originLat = -80; originLat <= 80; originLat += 10) {
            LocalFrame frame = LocalFrame.at(179.9, originLat);
            for (double east = -100_000; east <= 100_000; east += 12_345.678) {
                Coordinate lonLat = frame.toLonLat(new Coordinate(east, 0.7 * east));
                Coordinate back = frame.toLocal(lonLat);
                Coordinate again = frame.toLonLat(back);

                assertThat(back.distance(new Coordinate(east, 0.7 * east))).isLessThan(1e-6);
                assertThat(again.x).isCloseTo(lonLat.x, within(1e-9));
                assertThat(again.y).isCloseTo(lonLat.y, within(1e-9));
                assertThat(lonLat.x).isBetween(-180.0, 180.0);
            }
        }
    }

    @Test
    void theOriginIsNoughtAndEastAndNorthAreWhereTheyShouldBe() {
        LocalFrame frame = LocalFrame.at(-78.5, 35.5);

        assertThat(frame.toLocal(new Coordinate(-78.5, 35.5)).distance(new Coordinate(0, 0)))
                .isZero();
        assertThat(frame.toLocal(new Coordinate(-78.4, 35.5)).x).isPositive();
        assertThat(frame.toLocal(new Coordinate(-78.5, 35.6)).y).isPositive();
    }

    @Test
    void heightsAndTheFactoryAndTheOriginalAreLeftAlone() throws ParseException {
        GeometryFactory factory = new GeometryFactory();
        LocalFrame frame = LocalFrame.at(-78.5, 35.5);
        Geometry line = new WKTReader(factory).read("LINESTRING Z (0 0 312.25, 5 5 311)");
        Geometry moved = frame.toLonLat(line);

        assertThat(moved.getCoordinates()).extracting(Coordinate::getZ).containsExactly(312.25, 311.0);
        assertThat(moved.getFactory()).isSameAs(factory);
        assertThat(moved.getCoordinate().distance(new Coordinate(-78.5, 35.5))).isLessThan(1e-12);
        assertThat(line.getCoordinates()[1].x).isEqualTo(5);
        assertThat(frame.toLocal(new Coordinate(-78.5, 35.5, 7)).getZ()).isEqualTo(7);
    }

    @ParameterizedTest
    @ValueSource(doubles = {180.1, -500, Double.NaN, Double.POSITIVE_INFINITY})
    void thereIsNoFrameWhereThereIsNoEarth(double lon) {
        assertThatThrownBy(() -> LocalFrame.at(lon, 35)).isInstanceOf(IllegalArgumentException.class);
    }
}
