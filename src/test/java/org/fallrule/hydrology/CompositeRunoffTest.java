package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.acres;
import static org.fallrule.hydrology.Rains.inchesPerHour;
import static org.fallrule.hydrology.Rains.squareFeet;

import java.util.List;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class CompositeRunoffTest implements MethodContract {
    private static final String SHEET = "North Carolina DEQ record SW5240603, calculation sheet, 2024";
    private static final String HEC_22 = "FHWA HEC-22, 3rd edition (2009), example 3-1 (from memory)";

    @Override
    public Method method() {
        return CompositeRunoff.METHOD;
    }

    @Override
    public List<Published> published() {
        return List.of(
                c("335,881 ft2 at 0.95, 374,390 ft2 at 0.35", 0.63, SHEET, part(335_881, 0.95), part(374_390, 0.35)),
                q("the same at 7.16 in/h, factor dropped", 73.99, part(335_881, 0.95), part(374_390, 0.35)),
                c("341,776 ft2 at 0.95, 368,495 ft2 at 0.35", 0.64, SHEET, part(341_776, 0.95), part(368_495, 0.35)),
                q("the same at 7.16 in/h, factor dropped", 74.57, part(341_776, 0.95), part(368_495, 0.35)),
                new Published(
                        "8.95 ha at 0.25, 8.60 ha at 0.22",
                        0.235,
                        0.0005,
                        "",
                        HEC_22,
                        () -> coefficient(part(8.95, 0.25), part(8.60, 0.22))),
                new Published(
                        "2.20 ha at 0.90, 0.66 at 0.15, 7.52 at 0.25, 7.17 at 0.22",
                        0.315,
                        0.0006,
                        "",
                        HEC_22,
                        () -> coefficient(part(2.20, 0.90), part(0.66, 0.15), part(7.52, 0.25), part(7.17, 0.22))));
    }

    private static Published c(String given, double printed, String source, CompositeRunoff.Part... parts) {
        return new Published(given, printed, 0.005, "", source, () -> coefficient(parts));
    }

    private static Published q(String given, double printed, CompositeRunoff.Part... parts) {
        return new Published(given, printed, 0.005, "ft3/s", SHEET, () -> asUsSheet(whole(parts)));
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
    void aCoefficientOfExactlyOneIsAllowed() {
        assertThat(coefficient(part(1, 1))).isEqualTo(1);
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
