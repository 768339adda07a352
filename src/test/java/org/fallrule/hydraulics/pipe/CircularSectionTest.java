package org.fallrule.hydraulics.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What is printed of its elements is held against {@link NormalDepthTest}'s published figures. */
class CircularSectionTest {

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
