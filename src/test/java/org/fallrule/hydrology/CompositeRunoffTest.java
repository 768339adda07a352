package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.acres;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.squareFeet;

import java.util.List;
import java.util.stream.IntStream;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class CompositeRunoffTest implements MethodContract {

    @Override
    public Method method() {
        return CompositeRunoff.METHOD;
    }

    @Override
    public double ours(Given given) {
        List<String> areas = given.list("areas");
        List<String> coefficients = given.list("C");
        CompositeRunoff all = CompositeRunoff.of(IntStream.range(0, areas.size())
                        .mapToObj(i -> new CompositeRunoff.Part(
                                (Area) Written.parse(areas.get(i), Dimension.AREA)
                                        .quantity(),
                                new Ratio(Double.parseDouble(coefficients.get(i)))))
                        .toList())
                .value()
                .orElseThrow();
        return given.has("i") ? asUsSheet(all) : all.coefficient().value();
    }

    @Test
    void areasRoundedToAHundredthOfAnAcreMissTheFlowOfTheSheet() {
        CompositeRunoff rounded = whole(
                new CompositeRunoff.Part(acres(7.71), new Ratio(0.95)),
                new CompositeRunoff.Part(acres(8.59), new Ratio(0.35)));
        assertThat(asUsSheet(rounded)).isCloseTo(73.97, within(0.005)).isNotCloseTo(73.99, within(0.005));
    }

    @Test
    void whatCannotBeIsRefusedInWords() {
        assertThat(CompositeRunoff.of(List.of(part(1, 1.01))).why())
                .isEqualTo("a runoff coefficient lies between 0 and 1, found 1.01");
        assertThat(CompositeRunoff.of(List.of(part(1, -0.1))).why()).contains("found -0.1");
        assertThat(CompositeRunoff.of(List.of(part(10, 0.5), part(0, 0.5))).why())
                .isEqualTo("an area that drains must be above zero, found 0 m2");
        assertThat(CompositeRunoff.of(List.of()).why()).isEqualTo("no area drains here");
    }

    @Test
    void bothEndsOfACoefficientAreAllowed() {
        assertThat(coefficient(part(1, 1))).isEqualTo(1);
        assertThat(coefficient(part(1, 0), part(3, 0.8))).isCloseTo(0.6, within(1e-12));
    }

    private static CompositeRunoff.Part part(double squareFeet, double coefficient) {
        return new CompositeRunoff.Part(squareFeet(squareFeet), new Ratio(coefficient));
    }

    private static CompositeRunoff whole(CompositeRunoff.Part... parts) {
        return CompositeRunoff.of(List.of(parts)).value().orElseThrow();
    }

    private static double coefficient(CompositeRunoff.Part... parts) {
        return whole(parts).coefficient().value();
    }

    private static double asUsSheet(CompositeRunoff runoff) {
        double exact = RationalMethod.flow(runoff, inchesPerHour(7.16))
                .value()
                .orElseThrow()
                .in(Unit.CUBIC_FOOT_PER_SECOND);
        return exact / RationalMethod.DROPPED_BY_US_SHEETS;
    }
}
