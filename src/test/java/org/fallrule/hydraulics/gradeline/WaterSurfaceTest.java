package org.fallrule.hydraulics.gradeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fallrule.hydraulics.mechanics.Water;
import org.fallrule.hydraulics.pipe.CircularSection;
import org.fallrule.hydraulics.pipe.Roughness;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No printed backwater example in a round pipe could be read; it is held against another way of solving the same equation. */
class WaterSurfaceTest implements MethodContract {

    @Override
    public Method method() {
        return WaterSurface.METHOD;
    }

    private static Reach reach(double diameter, double n, double length, double slope, double flow) {
        RoundPipe pipe = new RoundPipe(new Length(diameter), new Roughness(n));
        DrainPipe drain = new DrainPipe(
                "P",
                "A",
                "B",
                pipe,
                new Length(length),
                new Elevation(10 + slope * length),
                new Elevation(10),
                LocalLosses.betweenBoxes(0.5));
        return new Reach(drain, new Flow(flow));
    }

    /** Runge and Kutta's fourth order on dy/dx = (Sf - S0) / (1 - F^2), x counted upstream, in steps of a centimetre. */
    private static double integrated(Reach reach, double depth) {
        double y = depth;
        double h = 0.01;
        for (double x = 0; x < reach.lengthM - 1e-9; x += h) {
            double k1 = grade(reach, y);
            double k2 = grade(reach, y + h / 2 * k1);
            double k3 = grade(reach, y + h / 2 * k2);
            double k4 = grade(reach, y + h * k3);
            y += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        return y;
    }

    private static double grade(Reach reach, double depth) {
        if (depth >= reach.diameterM) {
            return reach.fullFrictionSlope() - reach.slope;
        }
        CircularSection section = new CircularSection(reach.diameterM, depth);
        double area = section.areaSqM();
        double froudeSquared =
                reach.flowCms * reach.flowCms * section.topWidthM() / (Water.GRAVITY * area * area * area);
        return (reach.frictionSlopeAt(depth) - reach.slope) / (1 - froudeSquared);
    }

    @ParameterizedTest
    @CsvSource({
        // diameter, n, length, slope, flow, depth at the lower end; all metres
        "0.15, 0.012, 20, 0.003, 0.0040, 0.080", // drawn down to less than normal depth
        "0.15, 0.012, 20, 0.003, 0.0040, 0.130", // backed up above it
        "0.30, 0.013, 60, 0.002, 0.0200, 0.250",
        "0.15, 0.012, 12, 0.000, 0.0030, 0.080", // level
        "0.15, 0.012, 6, -0.002, 0.0020, 0.090", // rising
        "0.15, 0.012, 60, 0.000, 0.0060, 0.110", // level, full before its upper end
        "0.15, 0.012, 40, -0.002, 0.0040, 0.100", // rising, full before its upper end
        "0.20, 0.010, 2, 0.020, 0.0080, 0.150" // steep, drowned
    })
    void agreesWithNumericalIntegration(
            double diameter, double n, double length, double slope, double flow, double depth) {
        Reach reach = reach(diameter, n, length, slope, flow);

        assertThat(depth).isGreaterThan(reach.criticalM);
        assertThat(WaterSurface.depthAtUpperEnd(reach, depth, 0))
                .isCloseTo(integrated(reach, depth), within(0.005 * diameter));
    }
}
