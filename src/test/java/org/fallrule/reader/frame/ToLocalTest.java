package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class ToLocalTest {
    private static final Place WHERE = Place.of("lot.shp").feature("feature 3");
    private static final CoordinateSystem FEET = CoordinateSystem.of("EPSG:2264", WHERE);
    private static final LocalFrame FRAME = LocalFrame.at(-78.64, 35.78);

    @Test
    void aSquareOfAHundredSurveyFeetKeepsItsSizeButForTheGridScale() throws ParseException {
        GeometryFactory factory = new GeometryFactory();
        Geometry lot = new WKTReader(factory)
                .read(
                        "POLYGON Z ((2105000 735000 1, 2105100 735000 2, 2105100 735100 3, 2105000 735100 4, 2105000 735000 1))");
        Geometry local = new ToLocal(FEET, FRAME).local(lot, WHERE);

        double squareFoot = Math.pow(1200.0 / 3937, 2);
        assertThat(local.getArea() / (10_000 * squareFoot))
                .isCloseTo(1, within(3e-4))
                .isNotCloseTo(1, within(1e-6));
        assertThat(local.getCoordinates()).extracting(Coordinate::getZ).containsExactly(1.0, 2.0, 3.0, 4.0, 1.0);
        assertThat(local.getFactory()).isSameAs(factory);
        assertThat(lot.getCoordinate().x).isEqualTo(2105000);
    }

    @Test
    void theSameLotInFeetAndInDegreesFallsOnItself() {
        Coordinate degrees = FEET.toLonLat(new Coordinate(2105000, 735000), WHERE);
        CoordinateSystem lonLat = CoordinateSystem.of("EPSG:4326", WHERE);

        Coordinate byFeet = new ToLocal(FEET, FRAME).local(new Coordinate(2105000, 735000), WHERE);
        Coordinate byDegrees = new ToLocal(lonLat, FRAME).local(degrees, WHERE);
        assertThat(byFeet.distance(byDegrees)).isLessThan(1e-8);
    }

    @Test
    void aLayerFarFromThePlanIsRefusedWithFileAndFeature() {
        assertThatThrownBy(() -> new ToLocal(FEET, FRAME).local(new Coordinate(1300000, 600000), WHERE))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("lot.shp: feature 3: the position (1300000, 600000) lies at longitude -81.")
                .hasMessageContaining("more than 100 km from the rest of the plan")
                .hasMessageContaining("NAD83 / North Carolina (ftUS)");
    }

    @Test
    void anEmptyGeometryStaysEmpty() throws ParseException {
        assertThat(new ToLocal(FEET, FRAME)
                        .local(new WKTReader().read("POLYGON EMPTY"), WHERE)
                        .isEmpty())
                .isTrue();
    }
}
