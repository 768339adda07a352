package org.fallrule.hydraulics.outlet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.hydraulics.pipe.CircularSection;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class ApronShapeTest implements MethodContract {

    @Override
    public Method method() {
        return ApronShape.METHOD;
    }

    @Override
    public List<Published> published() {
        List<Published> all = new ArrayList<>(sheet("SW6220603", 36, 20, 0.6, 9, 23, 0.9, 1.35));
        all.addAll(sheet("SW5190201", 30, 16, 0.75, 7.5, 18.5, 1.125, 1.6875));
        return all;
    }

    private static List<Published> sheet(String record, double inches, double length, double stone, double... printed) {
        String given =
                "Do " + Printed.trimmed(inches) + " in, La " + Printed.trimmed(length) + " ft, d50 " + stone + " ft";
        String source = "calculation sheet in North Carolina DEQ record " + record + ", read";
        ApronShape shape = ApronShape.of(Length.inches(inches), Length.feet(length), Length.feet(stone))
                .value()
                .orElseThrow();
        return List.of(
                new Published(
                        given,
                        printed[0],
                        1e-9,
                        "ft at pipe",
                        source,
                        () -> shape.widthAtPipe().in(Unit.FOOT)),
                new Published(
                        given,
                        printed[1],
                        1e-9,
                        "ft at end",
                        source,
                        () -> shape.widthAtEnd().in(Unit.FOOT)),
                new Published(
                        given,
                        printed[2],
                        1e-9,
                        "ft stone",
                        source,
                        () -> shape.largestStone().in(Unit.FOOT)),
                new Published(
                        given,
                        printed[3],
                        1e-9,
                        "ft thick",
                        source,
                        () -> shape.thickness().in(Unit.FOOT)));
    }

    @Test
    void theSameSheetsVelocityIsThatOfTheFullPipe() {
        // Record SW6220603: 36 in, 53.77 ft3/s, 7.61 ft/s.
        CircularSection full =
                new CircularSection(Length.feet(3).metres(), Length.feet(3).metres());

        assertThat(full.velocityMps(cfs(53.77).cubicMetresPerSecond()) / 0.3048).isCloseTo(7.61, within(0.005));
    }

    @Test
    void aSheetThatUsesTheRuleOutsideItsRangeGetsNoShape() {
        // Record SW6190504 applies it to 72 in and an apron of 9 ft: 15 ft wide at the end, 18 ft at the pipe.
        assertThat(ApronShape.of(Length.inches(72), Length.feet(9), Length.feet(0.25))
                        .why())
                .contains("narrower than it begins");
        assertThat(ApronShape.of(Length.inches(72), Length.feet(12), Length.feet(0.25))
                        .value())
                .isPresent();
    }
}
