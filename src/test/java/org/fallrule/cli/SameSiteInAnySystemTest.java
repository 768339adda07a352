package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Place;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.reader.SiteReader;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleLibrary;
import org.locationtech.jts.geom.Coordinate;

class SameSiteInAnySystemTest {
    /** NAD83 / North Carolina (ftUS). */
    private static final CoordinateSystem FEET = CoordinateSystem.of("EPSG:2264", Place.of("EPSG:2264"));

    private static final double FOOT = 0.3048;

    /** How a site writes its positions, x and y in US survey feet. */
    private interface Writing {
        String position(double x, double y);
    }

    private static String feet(double x, double y) {
        return String.format(Locale.ROOT, "[%.6f, %.6f]", x, y);
    }

    private static String degrees(double x, double y) {
        Coordinate place = FEET.toLonLat(new Coordinate(x, y), Place.of("test"));
        return String.format(Locale.ROOT, "[%.12f, %.12f]", place.x, place.y);
    }

    /** A lot of 80 by 130 ft, turned by an angle, with a walk in front and a pipe under lawn to the outfall beside it. */
    private static List<Finding> findings(
            Path place, String name, Writing writing, double turn, double out, double gap) {
        Sheet sheet = new Sheet(writing, turn);
        SiteOnDisk site = SiteOnDisk.in(place, name)
                .with("site.yaml", """
                        crs: EPSG:2264
                        county: saltmeadow
                        units: {elevation: ft, diameter: in, depth: in}
                        absent: [septic, well, easement, tree, water_body, flood_zone]
                        """)
                .layer("lot.geojson", sheet.box("'id': 'L-1', 'own': true", 0, 0, 80, 130))
                .layer("walk.geojson", sheet.box("'id': 'W-1', 'access': 'public'", 0, -6, 80, -1))
                .layer("building.geojson", sheet.box("'id': 'B-1', 'kind': 'house'", 20, 50, 60, 90))
                .layer("inlet.geojson", sheet.feature("'id': 'CB-1', 'kind': 'basin', 'rim': 100", "Point", 10, 100))
                .layer("outfall.geojson", sheet.feature("'id': 'OF-1', 'kind': 'daylight'", "Point", 10, out))
                .layer(
                        "pipe.geojson",
                        sheet.feature(
                                "'id': 'P-1', 'diameter': 4, 'material': 'pvc_sdr35', 'invert_up': 98, 'invert_down': 96",
                                "LineString",
                                10,
                                100,
                                10,
                                out))
                .layer(
                        "utility.geojson",
                        sheet.feature(
                                "'id': 'U-1', 'kind': 'gas', 'diameter': 1, 'depth': 36",
                                "LineString",
                                10 + gap,
                                20,
                                10 + gap,
                                90),
                        sheet.feature(
                                "'id': 'U-2', 'kind': 'water_service', 'diameter': 1, 'depth': 60",
                                "LineString",
                                0,
                                60,
                                80,
                                60))
                .layer(
                        "spot.geojson",
                        sheet.feature("'elevation': 100", "Point", -5, -10),
                        sheet.feature("'elevation': 100", "Point", 85, -10),
                        sheet.feature("'elevation': 101", "Point", 85, 140),
                        sheet.feature("'elevation': 101", "Point", -5, 140));
        return Reviewer.review(
                        SiteAnalysis.of(SiteReader.read(site.path())),
                        new RuleLibrary(Path.of("rules"), "rules").load("saltmeadow", Optional.empty()),
                        LocalDate.of(2026, 6, 1))
                .findings();
    }

    /** A drawing in feet of the lot, laid out on the ground. */
    private record Sheet(Writing writing, double turn) {
        private static final double EAST = 2_800_000;
        private static final double NORTH = 700_000;

        private String position(double x, double y) {
            return writing.position(
                    EAST + x * Math.cos(turn) - y * Math.sin(turn), NORTH + x * Math.sin(turn) + y * Math.cos(turn));
        }

        String feature(String properties, String type, double... places) {
            StringBuilder positions = new StringBuilder();
            for (int i = 0; i < places.length; i += 2) {
                positions.append(i > 0 ? ", " : "").append(position(places[i], places[i + 1]));
            }
            return SiteOnDisk.feature(
                    properties, type, type.equals("Point") ? positions.toString() : "[" + positions + "]");
        }

        String box(String properties, double left, double low, double right, double high) {
            return SiteOnDisk.feature(
                    properties,
                    "Polygon",
                    "[[" + position(left, low) + ", " + position(right, low) + ", " + position(right, high) + ", "
                            + position(left, high) + ", " + position(left, low) + "]]");
        }
    }

    @Property(tries = 8)
    void aSiteInDegreesAndTheSameInFeetHaveTheSameFindings(
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn,
            @ForAll @DoubleRange(min = 2, max = 12) double out,
            @ForAll @DoubleRange(min = 0.6, max = 6) double gap)
            throws IOException {
        Path place = Files.createTempDirectory(Path.of("target"), "same-site");
        List<Finding> inFeet = findings(place, "feet", SameSiteInAnySystemTest::feet, turn, out, gap);
        List<Finding> inDegrees = findings(place, "degrees", SameSiteInAnySystemTest::degrees, turn, out, gap);

        assertThat(inFeet).hasSizeGreaterThan(10).hasSameSizeAs(inDegrees);
        for (int i = 0; i < inFeet.size(); i++) {
            Finding one = inFeet.get(i);
            Finding other = inDegrees.get(i);
            assertThat(other.rule()).isEqualTo(one.rule());
            assertThat(other.outcome()).as(one.rule()).isEqualTo(one.outcome());
            assertThat(value(other)).as(one.rule()).isCloseTo(value(one), within(0.001 * FOOT));
        }
    }

    private static double value(Finding finding) {
        return finding.observation()
                .measured()
                .map(Measured::value)
                .map(value -> value.si())
                .orElse(0.0);
    }
}
