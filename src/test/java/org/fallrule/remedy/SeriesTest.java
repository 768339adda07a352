package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class SeriesTest {
    private static final Change CHANGE = new Change(PlanInFeet.plan().site(), "a change");

    @Property
    void oneStepLessThanTheLeastDoesNotDo(@ForAll @IntRange(min = 1, max = 500) int enough) {
        List<Integer> tried = new ArrayList<>();
        Series series = new Series(300, steps -> {
            tried.add(steps);
            return steps >= enough ? Optional.of(CHANGE) : Optional.empty();
        });

        Optional<Series.Least> least = series.least(change -> true);

        assertThat(least.map(Series.Least::steps)).isEqualTo(enough <= 300 ? Optional.of(enough) : Optional.empty());
        assertThat(tried).hasSizeLessThan(20);
    }

    @Property
    void aChangeThatTakesTooManyStepsIsNotLookedForToItsEnd(
            @ForAll @IntRange(min = 1, max = 320) int enough,
            @ForAll @IntRange(min = 1, max = 320) int below,
            @ForAll @IntRange(min = 1, max = 320) int first) {
        List<Integer> tried = new ArrayList<>();
        Series series = new Series(300, steps -> {
                    tried.add(steps);
                    return steps >= enough ? Optional.of(CHANGE) : Optional.empty();
                })
                .first(first);
        Optional<Integer> whole = series.least(change -> true).map(Series.Least::steps);
        int tries = tried.size();
        tried.clear();

        assertThat(whole).isEqualTo(enough <= 300 ? Optional.of(enough) : Optional.empty());
        assertThat(series.least(change -> true, below).map(Series.Least::steps))
                .isEqualTo(whole.filter(steps -> steps < below));
        assertThat(tried).hasSizeLessThanOrEqualTo(tries);
    }

    @Test
    void whereWhatIsMissedSaysHowManyStepsItTakesTwoTriesProveIt() {
        List<Integer> tried = new ArrayList<>();
        Series series = new Series(300, steps -> {
                    tried.add(steps);
                    return steps >= 67 ? Optional.of(CHANGE) : Optional.empty();
                })
                .first(67);

        assertThat(series.least(change -> true).map(Series.Least::steps)).contains(67);
        assertThat(tried).containsExactly(67, 66);
    }

    @Test
    void aChangeThatIsMadeOrNotTakesOneStep() {
        assertThat(Series.single(() -> Optional.of(CHANGE))
                        .least(change -> true)
                        .map(Series.Least::steps))
                .contains(1);
    }

    @Property
    void whatALengthBearsIsTriedToItsEnd(@ForAll @IntRange(min = 0, max = 200) int borne) {
        Series series = Series.within(300, borne * 0.1 + 0.05, 0.1, steps -> Optional.of(CHANGE));

        assertThat(series.most()).isEqualTo(borne);
        assertThat(series.least(change -> false)).isEmpty();
    }

    @Test
    void theLastStepThatALengthBearsIsFound() {
        List<Integer> tried = new ArrayList<>();
        Series series = Series.within(300, 0.7, 0.1, steps -> {
            tried.add(steps);
            return steps >= 7 ? Optional.of(CHANGE) : Optional.empty();
        });

        assertThat(series.least(change -> true).map(Series.Least::steps)).contains(7);
        assertThat(tried).contains(6).doesNotContain(8);
    }
}
