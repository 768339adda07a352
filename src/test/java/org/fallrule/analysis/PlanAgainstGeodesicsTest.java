package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import net.sf.geographiclib.PolygonResult;
import org.fallrule.reader.SiteReader;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * Distances and areas in the plan's local frame against geodesics on the WGS 84 ellipsoid by GeographicLib (C. F. F. Karney,
 * "Algorithms for geodesics", Journal of Geodesy 87, 2013).
 */
class PlanAgainstGeodesicsTest {
    private static final double ONE_MILLIONTH = 1e-6;

    static List<Path> sites() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("sample-sites"))) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("sites")
    void distancesFromTheOutfallsToWalksAndLotLinesAreGeodesic(Path folder) {
        Site site = SiteReader.read(folder);
        int measured = 0;
        for (Feature outfall : site.features(Role.OUTFALL)) {
            for (Feature other : walksAndLots(site)) {
                PlanDistance distance = PlanDistance.between(outfall, other);
                double geodesic = geodesic(site, distance.between());
                assertThat(Math.abs(distance.gap().metres()))
                        .as(outfall.spoken() + " to " + other.spoken())
                        .isCloseTo(geodesic, within(geodesic * ONE_MILLIONTH + 1e-8));
                measured++;
            }
        }
        assertThat(measured).isGreaterThanOrEqualTo(2);
    }

    @ParameterizedTest
    @MethodSource("sites")
    void areasOfTheLotsAreGeodesic(Path folder) {
        Site site = SiteReader.read(folder);

        assertThat(site.features(Role.LOT)).isNotEmpty().allSatisfy(lot -> {
            double geodesic = geodesicArea(site, (Polygon) lot.geometry().getGeometryN(0));
            assertThat(lot.geometry().getArea()).isCloseTo(geodesic, within(geodesic * ONE_MILLIONTH));
        });
    }

    private static List<Feature> walksAndLots(Site site) {
        return Stream.concat(site.features(Role.WALK).stream(), site.features(Role.LOT).stream())
                .toList();
    }

    private static double geodesic(Site site, LineString line) {
        Coordinate from = site.frame().toLonLat(line.getCoordinateN(0));
        Coordinate to = site.frame().toLonLat(line.getCoordinateN(1));
        return Geodesic.WGS84.Inverse(from.y, from.x, to.y, to.x).s12;
    }

    private static double geodesicArea(Site site, Polygon polygon) {
        PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        for (int i = 1; i < ring.length; i++) {
            Coordinate place = site.frame().toLonLat(ring[i]);
            area.AddPoint(place.y, place.x);
        }
        PolygonResult result = area.Compute();
        return Math.abs(result.area);
    }
}
