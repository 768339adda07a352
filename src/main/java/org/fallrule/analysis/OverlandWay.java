package org.fallrule.analysis;

import java.util.List;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.hydrology.FaaTime;
import org.fallrule.hydrology.KinematicWave;
import org.fallrule.hydrology.Kirpich;
import org.fallrule.hydrology.ShallowConcentratedFlow;
import org.fallrule.hydrology.SheetFlow;
import org.fallrule.hydrology.TimeOfConcentration;
import org.fallrule.locality.OverlandTime;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;

/**
 * The farthest way over the ground to an inlet.
 *
 * @param length in plan
 * @param slope its fall over its length
 * @param coefficient how much of the rain runs off along it
 */
record OverlandWay(Length length, Slope slope, Ratio coefficient) {

    /** How long water takes along it, by the method of the place. */
    Answer<Time> time(OverlandTime how, DesignStorm storm) {
        return switch (how.by()) {
            case FAA_TIME -> FaaTime.time(coefficient, length, slope);
            case KIRPICH -> Kirpich.time(length, slope);
            case KINEMATIC_WAVE -> KinematicWave.time(how.roughness().orElseThrow(), length, slope, storm);
            case SHEET_FLOW -> sheetThenShallow(how, storm);
        };
    }

    private Answer<Time> sheetThenShallow(OverlandTime how, DesignStorm storm) {
        SheetFlow.Edition edition = SheetFlow.Edition.NEH_630_2010;
        double sheet = Math.min(length.metres(), edition.longest().metres());
        Answer<Time> first = SheetFlow.time(
                how.roughness().orElseThrow(),
                new Length(sheet),
                how.twoYearRain().orElseThrow(),
                slope,
                edition);
        double rest = length.metres() - sheet;
        List<Answer<Time>> parts = rest > 0
                ? List.of(
                        first,
                        ShallowConcentratedFlow.time(ShallowConcentratedFlow.Surface.UNPAVED, new Length(rest), slope))
                : List.of(first);
        return TimeOfConcentration.of(parts, storm).map(TimeOfConcentration::travelled);
    }
}
