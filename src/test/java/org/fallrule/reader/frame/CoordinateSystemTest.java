package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

class CoordinateSystemTest {
    private static final Place WHERE = Place.of("lot.prj");
    private static final String NAD83 =
            "GEOGCS[\"GCS_North_American_1983\",DATUM[\"D_North_American_1983\",SPHEROID[\"GRS_1980\",6378137.0,298.257222101]],"
                    + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]]";
    private static final String METRES = projected(NAD83, "UNIT[\"Meter\",1.0]");

    private static String projected(String base, String rest) {
        return "PROJCS[\"Lot grid\"," + base
                + ",PROJECTION[\"Transverse_Mercator\"],PARAMETER[\"False_Easting\",500000.0],"
                + "PARAMETER[\"False_Northing\",0.0],PARAMETER[\"Central_Meridian\",-81.0],PARAMETER[\"Scale_Factor\",0.9996],"
                + "PARAMETER[\"Latitude_Of_Origin\",0.0]," + rest + "]";
    }

    private static void assertRefused(ThrowingCallable call, String... parts) {
        assertThatThrownBy(call)
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("lot.prj: ")
                .satisfies(refusal ->
                        List.of(parts).forEach(part -> assertThat(refusal).hasMessageContaining(part)));
    }

    @ParameterizedTest
    @CsvSource({"OGC:CRS84", "EPSG:4326", "EPSG:4269", "EPSG:6318", "epsg:4326"})
    void geographicCodesAreLongitudeFirst(String code) {
        CoordinateSystem system = CoordinateSystem.of(code, WHERE);

        assertThat(system.isGeographic()).isTrue();
        assertThat(system.linearUnitToMetre()).isEmpty();
        assertThat(system.toLonLat(new Coordinate(-78.5, 35.25, 9), WHERE)).isEqualTo(new Coordinate(-78.5, 35.25));
        assertThat(system.toLonLat(new Coordinate(-78.5, 35.25, 9), WHERE).getZ())
                .isEqualTo(9);
    }

    @Test
    void aGeographicPrjIsLongitudeFirstEvenWhenItsAxesSayOtherwise() {
        String latitudeFirst = NAD83.substring(0, NAD83.length() - 1) + ",AXIS[\"Lat\",NORTH],AXIS[\"Long\",EAST]]";
        assertThat(CoordinateSystem.of(latitudeFirst, WHERE).toLonLat(new Coordinate(-78.5, 35.25), WHERE))
                .isEqualTo(new Coordinate(-78.5, 35.25));
    }

    @Test
    void aProjectedPrjIsEastingFirstEvenWhenItsAxesSayOtherwise() {
        Coordinate expected = CoordinateSystem.of(METRES, WHERE).toLonLat(new Coordinate(700000, 3900000), WHERE);
        String swapped = projected(
                NAD83.substring(0, NAD83.length() - 1) + ",AXIS[\"Lat\",NORTH],AXIS[\"Long\",EAST]]",
                "UNIT[\"Meter\",1.0],AXIS[\"Northing\",NORTH],AXIS[\"Easting\",EAST]");

        Coordinate got = CoordinateSystem.of(swapped, WHERE).toLonLat(new Coordinate(700000, 3900000), WHERE);
        assertThat(got.distance(expected)).isLessThan(1e-12);
        assertThat(expected.x).isCloseTo(-78.80, within(0.01));
    }

    @Test
    void aPrjThatTwoProgramsWrapOverLinesWithBlanksIsRead() {
        assertThat(CoordinateSystem.of("\uFEFF" + METRES.replace(",", ",\n   ") + "\r\n", WHERE)
                        .name())
                .isEqualTo("Lot grid");
    }

    @Test
    void theVerticalPartGivesTheUnitOfHeights() {
        String esri =
                ",VERTCS[\"NAVD88\",VDATUM[\"NAVD88\"],PARAMETER[\"Direction\",1.0],UNIT[\"Foot_US\",0.3048006096012192]]";
        String ogc = ",VERT_CS[\"NAVD88\",VERT_DATUM[\"NAVD88\",2005],UNIT[\"foot\",0.3048]]";

        assertThat(CoordinateSystem.of(METRES, WHERE).heightUnitToMetre()).isEmpty();
        assertThat(CoordinateSystem.of(METRES + esri, WHERE).heightUnitToMetre())
                .hasValue(0.3048006096012192);
        CoordinateSystem compound = CoordinateSystem.of("COMPD_CS[\"a, b\"," + METRES + ogc + "]", WHERE);
        assertThat(compound.heightUnitToMetre()).hasValue(0.3048);
        assertThat(compound.name()).isEqualTo("Lot grid");
    }

    @ParameterizedTest
    @CsvSource({"0", "0.000", "1e999"})
    void aUnitOfHeightsThatIsNoLengthIsRefused(String metres) {
        String vertical = ",VERT_CS[\"NAVD88\",VERT_DATUM[\"NAVD88\",2005],UNIT[\"foot\"," + metres + "]]";
        assertRefused(() -> CoordinateSystem.of(METRES + vertical, WHERE), "the unit of heights is given as " + metres);
    }

    @Test
    void anotherDatumIsRefusedByItsName() {
        String nad27 = NAD83.replace("D_North_American_1983", "D_North_American_1927")
                .replace("\"GRS_1980\",6378137.0,298.257222101", "\"Clarke_1866\",6378206.4,294.9786982");

        assertRefused(() -> CoordinateSystem.of(nad27, WHERE), "D_North_American_1927", "wanted NAD83 or WGS 84");
        assertRefused(
                () -> CoordinateSystem.of(projected(nad27, "UNIT[\"Meter\",1.0]"), WHERE), "D_North_American_1927");
        assertRefused(() -> CoordinateSystem.of("EPSG:2119", WHERE), "datum");
    }

    @Test
    void nad83OnAnEllipsoidNotItsOwnIsRefused() {
        assertRefused(() -> CoordinateSystem.of(NAD83.replace("6378137.0", "6378206.4"), WHERE), "datum");
        assertRefused(() -> CoordinateSystem.of(NAD83.replace("298.257222101", "294.98"), WHERE), "datum");
        assertRefused(() -> CoordinateSystem.of(NAD83.replace("\"Greenwich\",0.0", "\"Paris\",2.33"), WHERE), "datum");
    }

    @Test
    void webMercatorIsMeantByItsNameOrByASphereBesideTheEllipsoid() {
        String mercator =
                "PROJCS[\"%s\",GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\",SPHEROID[\"WGS 84\",6378137,298.257223563]],"
                        + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]],PROJECTION[\"Mercator_1SP\"],"
                        + "PARAMETER[\"central_meridian\",0],PARAMETER[\"scale_factor\",1],PARAMETER[\"false_easting\",0],"
                        + "PARAMETER[\"false_northing\",0],UNIT[\"metre\",1]%s]";
        String sphere = ",EXTENSION[\"PROJ4\",\"+proj=merc +a=6378137 +b=6378137 +lat_ts=0 +units=m\"]";
        Coordinate position = new Coordinate(-8181982.573, 5373055.472);

        assertThat(latitude(mercator.formatted("WGS 84 / Pseudo-Mercator", ""), position))
                .isCloseTo(43.4, within(1e-7));
        assertThat(latitude(mercator.formatted("map", sphere), position)).isCloseTo(43.4, within(1e-7));
        assertThat(latitude(mercator.formatted("World Mercator", ""), position)).isCloseTo(43.5917, within(1e-3));
        assertRefused(
                () -> CoordinateSystem.of(mercator.formatted("map", sphere.replace("+b=6378137", "+b=6300000")), WHERE),
                "EXTENSION of PROJ4");
    }

    private static double latitude(String wkt, Coordinate position) {
        return CoordinateSystem.of(wkt, WHERE).toLonLat(position, WHERE).y;
    }

    @Test
    void unitsOtherThanDegreesAreRefused() {
        assertRefused(
                () -> CoordinateSystem.of(
                        NAD83.replace("\"Degree\",0.0174532925199433", "\"Grad\",0.015707963267949"), WHERE),
                "unit is not the degree but 0.9 degrees");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "EPSG:999999|there is no EPSG:999999",
                "EPSG:abc|is not a known code",
                "ESRI:102719|wanted EPSG: and its number",
                "county grid|is no coordinate reference system",
                "``|is no coordinate reference system",
                "LOCAL_CS[\"site\",UNIT[\"foot\",0.3048]]|tied to no place on earth",
                "PROJCRS[\"x\"]|second edition (PROJCRS)",
                "GEOGCRS[\"x\"]|second edition (GEOGCRS)",
                "PROJCRS[\"x\",BASEGEOGCRS[\"y\",ID[\"EPSG\",4269]]]|second edition (PROJCRS)",
                "PROJCRS[\"x\",ID[\"ESRI\",102719]]|second edition (PROJCRS)",
                "{\"type\": \"ProjectedCRS\"}|PROJJSON, which is not read; wanted PROJCS",
                "+proj=utm +zone=17 +datum=NAD83|a PROJ string, which is not read; wanted PROJCS",
                "VERT_CS[\"x\",UNIT[\"m\",1]]|no PROJCS or GEOGCS",
                "GEOCCS[\"x\"]|found GEOCCS; wanted",
                "PROJCS[\"x\"]|not understood",
                "PROJCS[\"x\",GEOGCS[\"y\"]]|not understood",
                "PROJCS[\"x|do not match",
                "PROJCS]|is no coordinate reference system",
                "EPSG:4978|",
                "EPSG:5703|",
            })
    void whatCannotBePlacedIsRefused(String text, String says) {
        assertRefused(() -> CoordinateSystem.of(text, WHERE), says == null ? "wanted" : says);
    }

    @Test
    void aPrjCutOffAtAnyCharacterIsRefused() {
        for (int length = 0; length < METRES.length(); length++) {
            String cut = METRES.substring(0, length);
            assertRefused(() -> CoordinateSystem.of(cut, WHERE));
        }
    }

    @Test
    void aPrjWithAnyCharacterChangedIsReadOrRefused() {
        for (int at = 0; at < METRES.length(); at++) {
            for (char c : "[],\"0-Z\u0000".toCharArray()) {
                String changed = METRES.substring(0, at) + c + METRES.substring(at + 1);
                try {
                    assertThat(CoordinateSystem.of(changed, WHERE).name()).isNotNull();
                } catch (UnusableInput e) {
                    assertThat(e.faults().get(0).says()).isNotBlank();
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1_000, 15_000, 1_000_000})
    void deepOrLongTextIsRefusedNotFollowed(int depth) {
        assertRefused(() -> CoordinateSystem.of("PROJCS[".repeat(depth), WHERE));
        assertRefused(() -> CoordinateSystem.of("PROJCS[".repeat(depth) + "]".repeat(depth), WHERE));
    }

    @Test
    void projectedNumbersInAGeographicLayerAreToldSo() {
        CoordinateSystem system = CoordinateSystem.of("EPSG:4326", WHERE);

        assertRefused(
                () -> system.toLonLat(new Coordinate(600123.4, 1234567.8), WHERE),
                "x is 600123.4; a longitude lies between -180 and 180",
                "crs: EPSG:2264");
        assertRefused(
                () -> system.toLonLat(new Coordinate(-78, 90.5), WHERE),
                "y is 90.5; a latitude lies between -90 and 90");
        assertThat(system.toLonLat(new Coordinate(-180, 90), WHERE)).isEqualTo(new Coordinate(-180, 90));
    }

    @ParameterizedTest
    @CsvSource({"35.5, -78.5", "64.8, -147.7", "18.2, -66.4"})
    void latitudeFirstIsToldSo(double x, double y) {
        assertRefused(
                () -> CoordinateSystem.of("EPSG:4326", WHERE).toLonLat(new Coordinate(x, y), WHERE),
                "looks like latitude first");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void positionsThatAreNotFiniteAreRefused(double x) {
        assertRefused(
                () -> CoordinateSystem.of("EPSG:2264", WHERE).toLonLat(new Coordinate(x, 1), WHERE),
                "no finite x and y");
    }

    @ParameterizedTest
    @CsvSource({
        // degrees, a misplaced decimal point, feet of another zone, nonsense
        "-78.5, 35.5",
        "64170, 22400",
        "6000000, 2000000",
        "1e300, -1e300",
        "2000000, 1e9",
    })
    void positionsOutsideTheAreaOfUseAreRefused(double x, double y) {
        assertRefused(
                () -> CoordinateSystem.of("EPSG:2264", WHERE).toLonLat(new Coordinate(x, y), WHERE),
                "NAD83 / North Carolina (ftUS)",
                "meant for longitude -84.33 to -75.38, latitude 33.83 to 36.59",
                "feet or metres");
    }

    @Test
    void aPrjIsGoodForSixDegreesAroundItsMeridianAndOneMore() {
        CoordinateSystem system = CoordinateSystem.of(METRES, WHERE);

        assertThat(system.toLonLat(new Coordinate(1_000_000, 3_900_000), WHERE).x)
                .isCloseTo(-75.5, within(0.1));
        assertRefused(
                () -> system.toLonLat(new Coordinate(1_300_000, 3_900_000), WHERE), "Lot grid", "longitude -87 to -75");
        assertRefused(() -> system.toLonLat(new Coordinate(9e9, 9e9), WHERE), "Lot grid");
    }

    @ParameterizedTest
    @ValueSource(strings = {"EPSG:26917", "EPSG:2264", "EPSG:26931", "EPSG:2223", "EPSG:3857"})
    void nothingFarOutsideAZoneFoldsBackIntoIt(String code) {
        CoordinateSystem system = CoordinateSystem.of(code, WHERE);
        for (double size = 1e8; size < 1e12; size *= 1.37) {
            for (int turn = 0; turn < 24; turn++) {
                Coordinate far = new Coordinate(size * Math.cos(turn * 0.2618), size * Math.sin(turn * 0.2618));
                assertRefused(() -> system.toLonLat(far, WHERE), "meant for");
            }
        }
    }

    @Test
    void theOutermostZoneOfAlaskaReachesAcrossTheDateLine() {
        CoordinateSystem system = CoordinateSystem.of("EPSG:26940", WHERE);

        assertThat(system.toLonLat(new Coordinate(400_000, 300_000), WHERE).x).isBetween(170.0, 180.0);
        assertThat(system.toLonLat(new Coordinate(1_500_000, 300_000), WHERE).x).isBetween(-180.0, -164.0);
    }

    @Test
    void aCodeBeyondTheTableComesFromTheDatabase() {
        CoordinateSystem compound = CoordinateSystem.of("EPSG:8742", WHERE);

        assertThat(compound.name()).isEqualTo("NAD83 / Kentucky South (ftUS)");
        assertThat(compound.heightUnitToMetre().orElseThrow()).isCloseTo(1200.0 / 3937, within(1e-12));
        assertRefused(() -> compound.toLonLat(new Coordinate(0, 0), WHERE), "meant for");
    }

    /** As {@code gdalsrsinfo -o wkt2_2019 EPSG:2264} of PROJ 9.1.1 ends; its middle is left out. */
    @Test
    void wellKnownTextOfTheSecondEditionIsReadByTheCodeThatItClosesWith() {
        String wkt = "PROJCRS[\"NAD83 / North Carolina (ftUS)\",\n    BASEGEOGCRS[\"NAD83\",ID[\"EPSG\",4269]],\n"
                + "    USAGE[AREA[\"North Carolina\"]],\n    ID[\"EPSG\",2264]]";

        assertThat(CoordinateSystem.of(wkt, Place.of("lot.prj")).name()).isEqualTo("NAD83 / North Carolina (ftUS)");
    }
}
