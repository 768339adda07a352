package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fallrule.document.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/**
 * The library that reads every other definition is what the answers are held against; {@code CoordinateSystemAgainstProjTest} holds
 * both against PROJ.
 */
class PlainDefinitionTest {
    private static final Place WHERE = Place.of("lot.prj");

    /** Its area of use, Samoa, lies twenty degrees from its meridian, where the library has no answer. */
    private static final int FAR_FROM_ITS_ZONE = 2156;

    private static final String CAROLINA =
            "PROJCS[\"NAD_1983_StatePlane_North_Carolina_FIPS_3200_Feet\",GEOGCS[\"GCS_North_American_1983\","
                    + "DATUM[\"D_North_American_1983\",SPHEROID[\"GRS_1980\",6378137.0,298.257222101]],"
                    + "PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]],"
                    + "PROJECTION[\"Lambert_Conformal_Conic\"],PARAMETER[\"False_Easting\",2000000.0],"
                    + "PARAMETER[\"False_Northing\",0.0],PARAMETER[\"Central_Meridian\",-79.0],"
                    + "PARAMETER[\"Standard_Parallel_1\",34.3333333333333],PARAMETER[\"Standard_Parallel_2\",36.1666666666667],"
                    + "PARAMETER[\"Latitude_Of_Origin\",33.75],UNIT[\"Foot_US\",0.304800609601219]]";

    private static Optional<CoordinateSystem> plain(String wkt) {
        return PlainDefinition.read(wkt, OptionalDouble.empty(), Optional.empty(), WHERE);
    }

    private static CoordinateSystem byLibrary(CodeTable.Row row) {
        return new Definition(WktParsing.parse(row.wkt(), WHERE), WHERE)
                .system(OptionalDouble.empty(), Optional.of(row.area()));
    }

    private static List<CodeTable.Row> projectedRows() throws IOException {
        try (var lines = CodeTable.open()) {
            return lines.lines()
                    .map(line -> CodeTable.find(Integer.parseInt(line.split("\t", 2)[0]))
                            .orElseThrow())
                    .filter(row -> !row.isGeographic() && row.code() != FAR_FROM_ITS_ZONE)
                    .toList();
        }
    }

    /** A corner of the area of use, its middle, and the corner across. */
    private static List<Coordinate> placesIn(AreaOfUse area) {
        double width = area.east() - area.west() + (area.east() < area.west() ? 360 : 0);
        List<Coordinate> places = new ArrayList<>();
        for (double part : new double[] {0, 0.5, 1}) {
            double lon = Math.IEEEremainder(area.west() + part * width, 360);
            places.add(new Coordinate(lon, area.south() + part * (area.north() - area.south())));
        }
        return places;
    }

    /** To a millimetre: five degrees from its meridian the library's own series is off by a fifth of that, as PROJ shows. */
    @Test
    void nearlyEveryCodeIsReadPlainAndLeadsWhereTheLibraryLeads() throws IOException {
        List<CodeTable.Row> rows = projectedRows();
        List<String> apart = new ArrayList<>();
        int read = 0;
        for (CodeTable.Row row : rows) {
            Optional<CoordinateSystem> plain =
                    PlainDefinition.read(row.wkt(), OptionalDouble.empty(), Optional.of(row.area()), WHERE);
            if (plain.isPresent()) {
                read++;
                apart.addAll(differences(row, plain.get(), byLibrary(row)));
            }
        }

        assertThat(apart).isEmpty();
        assertThat(read).as("of " + rows.size()).isGreaterThan(1600);
    }

    private static List<String> differences(CodeTable.Row row, CoordinateSystem plain, CoordinateSystem library) {
        List<String> found = new ArrayList<>();
        double unit = library.linearUnitToMetre().orElseThrow();
        if (!plain.name().equals(library.name())
                || Math.abs(plain.linearUnitToMetre().orElseThrow() - unit) > 1e-15) {
            found.add(row.code() + " is " + plain.name() + ", by the library " + library.name());
        }
        for (Coordinate lonLat : placesIn(row.area())) {
            Coordinate grid = plain.fromLonLat(lonLat).orElseThrow();
            double forth = grid.distance(library.fromLonLat(lonLat).orElseThrow()) * unit;
            double back = metresApart(plain.toLonLat(grid, WHERE), library.toLonLat(grid, WHERE));
            if (!(forth < 1e-3 && back < 1e-3)) {
                found.add(row.code() + " at " + lonLat + ": " + forth + " m forth, " + back + " m back");
            }
        }
        return found;
    }

    private static double metresApart(Coordinate one, Coordinate other) {
        return 111_000 * Math.hypot(Math.IEEEremainder(one.x - other.x, 360), one.y - other.y);
    }

    @Test
    void theTextOfAProgramIsReadPlain() {
        CoordinateSystem read = plain(CAROLINA).orElseThrow();

        assertThat(read.name()).isEqualTo("NAD_1983_StatePlane_North_Carolina_FIPS_3200_Feet");
        assertThat(read.linearUnitToMetre()).hasValue(0.304800609601219);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Lambert_Conformal_Conic>Albers",
                "D_North_American_1983>D_North_American_1927",
                "6378137.0>6378206.4",
                "298.257222101>294.978698214",
                "PRIMEM[\"Greenwich\",0.0]>PRIMEM[\"Paris\",2.337229]",
                "0.0174532925199433>0.015707963267949",
                "298.257222101]>298.257222101],TOWGS84[1,2,3,0,0,0,0]",
                "34.3333333333333>-36.1666666666667",
                "\"False_Northing\">\"False_Southing\"",
                "2000000.0>many",
                ",PARAMETER[\"False_Northing\",0.0]>",
                "PARAMETER[\"False_Northing\",0.0]>PARAMETER[\"False_Northing\",0.0],PARAMETER[\"False_Northing\",1.0]",
                "UNIT[\"Foot_US\",0.304800609601219]>UNIT[\"Foot_US\",0]",
                "UNIT[\"Foot_US\",0.304800609601219]>UNIT[\"Foot_US\",1],AXIS[\"Westing\",WEST],AXIS[\"N\",NORTH]",
                "UNIT[\"Foot_US\",0.304800609601219]>UNIT[\"Foot_US\",1],EXTENSION[\"PROJ4\",\"+proj=lcc\"]"
            })
    void anythingElseIsLeftToTheLibrary(String change) {
        String[] fromTo = change.split(">", 2);
        assertThat(CAROLINA).contains(fromTo[0]);

        assertThat(plain(CAROLINA.replace(fromTo[0], fromTo[1]))).isEmpty();
    }
}
