package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.TREE;
import static org.fallrule.site.Role.UTILITY;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;

class MarkedPointsTest {
    private final List<Fault> faults = new ArrayList<>();

    private List<Feature> joined(PlanInFeet plan) {
        return MarkedPoints.joined(UTILITY, plan.site().features(UTILITY), faults);
    }

    @Test
    void marksAreJoinedInTheirSequenceWhateverOrderTheyComeIn() {
        List<Feature> lines =
                joined(plan().with(UTILITY, "m3", "POINT (60 0)", "line = G-1", "sequence = 10", "kind = gas")
                        .with(UTILITY, "m1", "POINT (0 0)", "line = G-1", "sequence = 1", "kind = gas")
                        .with(UTILITY, "m2", "POINT (30 5)", "line = G-1", "sequence = 2", "kind = gas"));

        assertThat(lines).singleElement().satisfies(line -> {
            assertThat(line.id()).isEqualTo("G-1");
            assertThat(line.get(Attribute.KIND)).contains("gas");
            assertThat(line.geometry().getCoordinates())
                    .extracting(place -> Math.round(place.x / 0.3048))
                    .containsExactly(0L, 30L, 60L);
        });
        assertThat(faults).isEmpty();
    }

    @Test
    void marksWithoutASequenceAreNotJoined() {
        assertThat(joined(plan().with(UTILITY, "m1", "POINT (0 0)", "line = G-1", "kind = gas")))
                .isEmpty();
        assertThat(faults)
                .singleElement()
                .satisfies(fault -> assertThat(fault.says())
                        .isEqualTo(
                                "is a point; draw utilities as lines, or say with the columns line (the name of the line) and"
                                        + " sequence (1, 2, 3 …) which marks belong together and in what order"));
    }

    @Test
    void twoMarksInOnePlaceOfTheSequenceAreAFault() {
        assertThat(joined(plan().with(UTILITY, "m1", "POINT (0 0)", "line = G-1", "sequence = 1")
                        .with(UTILITY, "m2", "POINT (9 0)", "line = G-1", "sequence = 1")))
                .isEmpty();
        assertThat(faults)
                .extracting(Fault::says)
                .containsExactly("has the same sequence as another mark of line G-1; number the marks along the line");
    }

    @Test
    void oneMarkIsNoLine() {
        assertThat(joined(plan().with(UTILITY, "m1", "POINT (0 0)", "line = G-1", "sequence = 1")))
                .isEmpty();
        assertThat(faults)
                .extracting(Fault::says)
                .containsExactly("is the only mark of line G-1; a line wants two or more");
    }

    @Test
    void aDepthThatDiffersFromMarkToMarkIsThatOfNoLine() {
        List<Feature> lines = joined(plan().with(
                        UTILITY, "m1", "POINT (0 0)", "line = G-1", "sequence = 1", "depth = 24 in", "quality = B")
                .with(UTILITY, "m2", "POINT (9 0)", "line = G-1", "sequence = 2", "depth = 30 in", "quality = B"));

        assertThat(lines).singleElement().satisfies(line -> {
            assertThat(line.get(Attribute.DEPTH)).isEmpty();
            assertThat(line.get(Attribute.QUALITY)).contains("B");
        });
    }

    @Test
    void linesAndOtherRolesAreLeftAsTheyAre() {
        assertThat(joined(plan().with(UTILITY, "U-1", "LINESTRING (0 0, 9 0)"))).hasSize(1);
        List<Feature> trees = plan().with(TREE, "T-1", "POINT (0 0)").site().features(TREE);
        assertThat(MarkedPoints.joined(TREE, trees, faults)).isEqualTo(trees);
        assertThat(faults).isEmpty();
    }
}
