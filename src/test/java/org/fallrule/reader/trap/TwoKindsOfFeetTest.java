package org.fallrule.reader.trap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.Map;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TwoKindsOfFeetTest {
    private static final PlanInFeet PLAN = plan().with(Role.LOT, "L-1", "POLYGON ((0 0, 100 0, 100 100, 0 0))")
            .with(Role.BUILDING, "B-1", "POLYGON ((20 10, 60 10, 60 30, 20 10))");

    /**
     * By hand, two parts in a million each: 1.5 ft of the northing of 740,000 ft; 0.1 ft of the 50,000 ft east of the zone's middle
     * where the false easting is in the layer's own feet, 4.1 ft of 2,050,000 ft where it is that of the zone.
     */
    @ParameterizedTest(name = "with a false easting of {0} international feet they lie {1} ft apart")
    @CsvSource({"2000000.002616666, 1.5", "2000004.002624672, 4.4"})
    void surveyFeetAndInternationalFeetOfOneZoneAreTold(String falseEasting, String apart) {
        String other = Read.INTERNATIONAL.replace("2000000.002616666", falseEasting);

        assertThat(Read.says(new TwoKindsOfFeet(), PLAN, Map.of(Role.BUILDING, other)))
                .containsExactly(
                        "building.shp: is in international feet, lot.shp in US survey feet of the same zone; the same"
                                + " numbers lie " + apart
                                + " ft apart in the two: ask each office which foot it works in, and mend"
                                + " the .prj that is wrong");
    }

    @ParameterizedTest(name = "beside EPSG:2264 {0} is no trap")
    @ValueSource(strings = {"EPSG:2264", "EPSG:32119", "OGC:CRS84", "EPSG:2273"})
    void oneFootMetresDegreesAndAnotherStatesFeetAreSilent(String other) {
        assertThat(Read.says(new TwoKindsOfFeet(), PLAN, Map.of(Role.BUILDING, other)))
                .isEmpty();
    }
}
