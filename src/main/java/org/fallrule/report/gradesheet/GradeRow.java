package org.fallrule.report.gradesheet;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;

/**
 * One row of a grade sheet. What the plan does not tell is empty.
 *
 * @param station metres from the pipe's upstream end
 * @param ground the ground
 * @param invert the invert
 * @param cut from the ground to the bottom of the trench
 * @param fall how much the invert falls to the next row; negative when it rises
 * @param byHand whether the trench is dug by hand here
 * @param at what is here: structures, bends, crossings
 */
public record GradeRow(
        double station,
        Optional<Elevation> ground,
        Optional<Elevation> invert,
        Optional<Length> cut,
        Optional<Length> fall,
        boolean byHand,
        List<String> at) {
    public GradeRow {
        at = List.copyOf(at);
    }
}
