package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.hydrology.Rains.minutes;
import static org.fallrule.hydrology.Rains.percent;

import java.util.List;
import org.fallrule.hydrology.ShallowConcentratedFlow.Surface;
import org.fallrule.hydrology.SheetFlow.Edition;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;

class TimeOfConcentrationTest implements MethodContract {
    private static final DesignStorm STORM = Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5);

    @Override
    public Method method() {
        return TimeOfConcentration.METHOD;
    }

    @Override
    public List<Published> published() {
        return List.of(
                new Published(
                        "overland after Kerby 500 ft, N 0.40, S 0.02; channel after Kirpich 4,780 ft, S 0.00947",
                        57,
                        0.5,
                        "min",
                        "TxDOT Hydraulic Design Manual, ch. 4 section 11, Application of the Kerby-Kirpich method",
                        () -> travelled(List.of(
                                        Kerby.time(new Ratio(0.40), Length.feet(500), percent(2)),
                                        Kirpich.time(Length.feet(4780), new Slope(50.0 / 5280))))
                                .in(Unit.MINUTE)),
                new Published(
                        "sheet 100 ft, shallow 1,400 ft, channel 0.99 h as printed",
                        1.53,
                        0.005,
                        "h",
                        "NRCS TR-55 (1986), example 3-1 (from memory)",
                        () -> travelled(List.of(
                                        SheetFlow.time(
                                                new Ratio(0.24),
                                                Length.feet(100),
                                                Length.inches(3.6),
                                                percent(1),
                                                Edition.TR_55_1986),
                                        ShallowConcentratedFlow.time(Surface.UNPAVED, Length.feet(1400), percent(1)),
                                        Answer.of(new Time(0.99 * 3600))))
                                .in(Unit.HOUR)));
    }

    @Test
    void aShortTimeIsRaisedToTheShortestDurationAndTheTimeItselfIsKept() {
        TimeOfConcentration time = TimeOfConcentration.of(List.of(Answer.of(minutes(2))), STORM)
                .value()
                .orElseThrow();
        assertThat(time.travelled()).isEqualTo(minutes(2));
        assertThat(time.counting()).isEqualTo(minutes(5));
    }

    @Test
    void aTimeOfExactlyTheShortestDurationStays() {
        assertThat(TimeOfConcentration.of(List.of(Answer.of(minutes(5))), STORM)
                        .value()
                        .orElseThrow()
                        .counting())
                .isEqualTo(minutes(5));
    }

    @Test
    void whereOnePartHasNoAnswerTheSumHasNone() {
        assertThat(TimeOfConcentration.of(List.of(Answer.of(minutes(2)), Answer.none("no slope")), STORM)
                        .why())
                .isEqualTo("no slope");
    }

    private static Time travelled(List<Answer<Time>> parts) {
        return TimeOfConcentration.of(parts, STORM).value().orElseThrow().travelled();
    }
}
