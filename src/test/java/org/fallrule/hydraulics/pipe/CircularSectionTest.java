package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CircularSectionTest {

    /** A page that credits V. T. Chow, Open-Channel Hydraulics, table 2-2 (read in that page): y/D, A/D^2, P/D, R/D. */
    @ParameterizedTest
    @CsvSource({
        "0.55, 0.442616, 1.670964, 0.264886",
        "0.60, 0.492028, 1.772154, 0.277644",
        "0.65, 0.540418, 1.875489, 0.288148",
        "0.70, 0.587230, 1.982313, 0.296235",
        "0.75, 0.631852, 2.094395, 0.301687"
    })
    void areaPerimeterAndRadiusArePrintedSo(double filling, double area, double perimeter, double radius) {
        CircularSection section = new CircularSection(1, filling);

        assertThat(section.areaSqM()).isCloseTo(area, within(2e-6));
        assertThat(section.wettedPerimeterM()).isCloseTo(perimeter, within(2e-6));
        assertThat(section.hydraulicRadiusM()).isCloseTo(radius, within(2e-6));
    }

    /** Chow, Open-Channel Hydraulics, appendix A, A R^(2/3) / D^(8/3) (values from memory). */
    @ParameterizedTest
    @CsvSource({"0.50, 0.156", "0.94, 0.335", "1.00, 0.312"})
    void theSectionFactorIsPrintedSo(double filling, double factor) {
        assertThat(new CircularSection(1, filling).sectionFactor()).isCloseTo(factor, within(0.0005));
    }

    /** Hydraulic elements of a circular pipe, ASCE manual of practice and Chow appendix A (values from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.10, 0.052, 0.254",
        "0.20, 0.142, 0.482",
        "0.25, 0.196, 0.587",
        "0.30, 0.252, 0.684",
        "0.40, 0.374, 0.857",
        "0.50, 0.500, 1.000",
        "0.60, 0.626, 1.111",
        "0.70, 0.748, 1.185",
        "0.75, 0.805, 1.207",
        "0.80, 0.858, 1.217",
        "0.90, 0.948, 1.192",
        "1.00, 1.000, 1.000"
    })
    void areaAndRadiusOverThoseOfTheFullPipe(double filling, double area, double radius) {
        CircularSection section = new CircularSection(0.3, 0.3 * filling);
        CircularSection full = new CircularSection(0.3, 0.3);

        assertThat(section.areaSqM() / full.areaSqM()).isCloseTo(area, within(0.0006));
        assertThat(section.hydraulicRadiusM() / full.hydraulicRadiusM()).isCloseTo(radius, within(0.0006));
    }

    @Test
    void isWholeWhenFullOrDrownedAndNothingWhenDry() {
        assertThat(new CircularSection(2, 2).areaSqM()).isCloseTo(Math.PI, within(1e-12));
        assertThat(new CircularSection(2, 9).areaSqM()).isCloseTo(Math.PI, within(1e-12));
        assertThat(new CircularSection(2, 9).topWidthM()).isZero();
        assertThat(new CircularSection(2, 0).areaSqM()).isZero();
        assertThat(new CircularSection(2, 0).hydraulicRadiusM()).isZero();
    }

    @Test
    void aFilmOfWaterIsReckonedWithoutLosingDigits() {
        // A parabola's segment: area two thirds of width times depth.
        CircularSection film = new CircularSection(1, 1e-8);

        assertThat(film.areaSqM() / (2.0 / 3 * film.topWidthM() * 1e-8)).isCloseTo(1, within(1e-7));
    }
}
