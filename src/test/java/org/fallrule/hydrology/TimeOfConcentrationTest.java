package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.hydrology.Rains.minutes;

import java.util.List;
import org.fallrule.hydrology.ShallowConcentratedFlow.Surface;
import org.fallrule.hydrology.SheetFlow.Edition;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

class TimeOfConcentrationTest implements MethodContract {
    private static final DesignStorm STORM = Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5);

    @Override
    public Method method() {
        return TimeOfConcentration.METHOD;
    }

    @Override
    public double ours(Given given) {
        List<Answer<Time>> parts = given.has("overland")
                ? List.of(
                        Kerby.time(given.ratio("N"), given.length("overland"), given.slope("S overland")),
                        Kirpich.time(given.length("channel"), given.slope("S channel")))
                : List.of(
                        SheetFlow.time(
                                given.ratio("n"),
                                given.length("sheet"),
                                given.length("P2"),
                                given.slope("s"),
                                Edition.TR_55_1986),
                        ShallowConcentratedFlow.time(Surface.UNPAVED, given.length("shallow"), given.slope("s")),
                        Answer.of(given.time("channel")));
        return given.in(
                TimeOfConcentration.of(parts, STORM).value().orElseThrow().travelled());
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
}
