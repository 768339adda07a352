package org.fallrule.reader.raster;

import static org.assertj.core.api.Assertions.assertThat;

import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;

class CellMapTest {

    /** The bound in the class's own words: L cubed over the earth's radius squared, here with L the side of the box. */
    @ParameterizedTest(name = "{0}, box of {1} m")
    @CsvSource({
        "EPSG:2264, 1450240, 549820, 200",
        "EPSG:2264, 1450240, 549820, 2000",
        "EPSG:2264, 1450240, 549820, 20000",
        "EPSG:26917, 330000, 3905000, 2000",
        "EPSG:26917, 330000, 3905000, 20000",
        "EPSG:3857, -9005000, 4205000, 2000",
        "EPSG:4269, -80.9, 35.3, 2000",
    })
    void departsFromTheExactWayByTermsOfTheThirdOrder(String crs, double x, double y, double side) {
        LocalFrame frame = Fixture.frame(crs, x, y);
        CoordinateSystem system = CoordinateSystem.of(crs, Fixture.WHERE);
        CellMap.Exact exact = local -> system.fromLonLat(frame.toLonLat(local)).orElseThrow();
        CellMap map = new CellMap(Fixture.around(side / 2), exact);
        double bound = Math.pow(side, 3) / Math.pow(6.371e6, 2) + 1e-6;

        for (double u = -0.5; u <= 0.5; u += 0.1) {
            for (double v = -0.5; v <= 0.5; v += 0.1) {
                Coordinate local = new Coordinate(u * side, v * side);
                double cells = map.cells(local).distance(exact.cells(local));
                assertThat(cells * map.spacing()).as("metres off").isLessThan(bound);
            }
        }
    }
}
