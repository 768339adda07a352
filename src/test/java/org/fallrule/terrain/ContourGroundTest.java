package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/** Ground from contours, held against shapes whose contours are known. */
class ContourGroundTest {

    private static Coordinate[] circle(double radius, int corners) {
        Coordinate[] places = new Coordinate[corners + 1];
        for (int i = 0; i <= corners; i++) {
            double angle = 2 * Math.PI * (i % corners) / corners;
            places[i] = new Coordinate(radius * Math.cos(angle), radius * Math.sin(angle));
        }
        return places;
    }

    /**
     * A cone of slope 0.1, z = 10 - r / 10, contours of 1 m, a spot on its top. Bound: contours of 72 corners depart from
     * their circles by r (1 - cos(pi / 72)) < 0.001 r at most, and along facets between two of them the cone bends by no
     * more than that of the larger; so heights are off by less than slope * 0.001 r twice, 0.02 m at r = 100.
     */
    @Test
    void aConeComesBackWithItsSpotOnTop() {
        Survey survey = new Survey().spot(0, 0, 10);
        for (int z = 0; z <= 9; z++) {
            survey.contour(z, circle(10 * (10 - z), 72));
        }
        GroundSurface ground = survey.ground();

        for (double r = 0; r < 99; r += 3.7) {
            for (double angle = 0.1; angle < 6; angle += 0.7) {
                double height = Survey.height(ground, r * Math.cos(angle), r * Math.sin(angle));
                assertThat(height).isCloseTo(10 - r / 10, within(0.02));
            }
        }
    }

    /** Without a spot nothing is known of the top: it stays level, off by less than the contour interval. */
    @Test
    void aConeWithoutASpotStaysLevelWithinItsHighestContour() {
        Survey survey = new Survey();
        for (int z = 0; z <= 9; z++) {
            survey.contour(z, circle(10 * (10 - z), 72));
        }
        assertThat(Survey.height(survey.ground(), 1, 2)).isEqualTo(9);
    }

    /**
     * A ridge whose crest falls evenly along x: z = (x - |y| / tan(a)) / 10, so that contours are nested bends with tips 10
     * m apart on y = 0. Bound on the crest: heights along the skeleton are linear from tip to tip; where vertices of the two
     * arms are not abreast it winds by a part of their spacing s = 1 m, which moves a height by less than s / 10 m each way.
     */
    @ParameterizedTest(name = "half angle of the bend {0} degrees")
    @ValueSource(doubles = {20, 35, 50})
    void theCrestOfARidgeFallsEvenlyBetweenItsContours(double degrees) {
        double cot = 1 / Math.tan(Math.toRadians(degrees));
        Survey survey = new Survey();
        for (int z = -8; z <= 4; z++) {
            Coordinate[] bend = new Coordinate[121];
            for (int i = 0; i < bend.length; i++) {
                double arm = (i - 60) * 1.0;
                bend[i] = new Coordinate(
                        10 * z + Math.abs(arm) * Math.cos(Math.toRadians(degrees)),
                        arm * Math.sin(Math.toRadians(degrees)));
            }
            survey.contour(z + 100.0, bend);
        }
        GroundSurface ground = survey.ground();

        for (double x = -60; x <= 20; x += 1.3) {
            assertThat(Survey.height(ground, x, 0)).as("x %s", x).isCloseTo(100 + x / 10, within(0.1));
        }
        for (double x = -40; x <= 20; x += 2.1) {
            for (double y = -6; y <= 6; y += 1.1) {
                double height = 100 + (x - Math.abs(y) * cot) / 10;
                assertThat(Survey.height(ground, x, y)).as("%s, %s", x, y).isCloseTo(height, within(0.25));
            }
        }
    }
}
