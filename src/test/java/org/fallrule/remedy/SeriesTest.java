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

    @Test
    void aChangeThatIsMadeOrNotTakesOneStep() {
        assertThat(Series.single(() -> Optional.of(CHANGE))
                        .least(change -> true)
                        .map(Series.Least::steps))
                .contains(1);
    }
}
