package org.fallrule.hydraulics.outlet;

import static org.assertj.core.api.Assertions.assertThat;

import org.fallrule.measure.Length;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class ApronShapeTest implements MethodContract {

    @Override
    public Method method() {
        return ApronShape.METHOD;
    }

    @Override
    public double ours(Given given) {
        ApronShape shape = ApronShape.of(given.length("pipe"), given.length("length"), given.length("stone"))
                .value()
                .orElseThrow();
        return given.in(
                switch (given.what()) {
                    case "width at the pipe" -> shape.widthAtPipe();
                    case "width at the end" -> shape.widthAtEnd();
                    case "largest stone" -> shape.largestStone();
                    default -> shape.thickness();
                });
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
