package org.fallrule.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DimensionTest {

    /** The data files write it beside numbers; a rain in m/s and an angle in radians nobody writes into a plan. */
    @ParameterizedTest
    @EnumSource(
            value = Dimension.class,
            names = {"RATIO", "INTENSITY", "ANGLE"},
            mode = EnumSource.Mode.EXCLUDE)
    void theSignOfTheSiUnitIsReadAsOne(Dimension dimension) {
        assertThat(Unit.named(dimension.siSymbol(), dimension))
                .isPresent()
                .hasValueSatisfying(unit -> assertThat(unit.toSi()).isEqualTo(1));
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theExampleInAnErrorCanBeRead(Dimension dimension) {
        for (String each : dimension.example().split(" or ", -1)) {
            assertThat(Written.parse(each, dimension).quantity().dimension()).isEqualTo(dimension);
        }
    }
}
