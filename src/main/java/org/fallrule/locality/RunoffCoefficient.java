package org.fallrule.locality;

import java.util.List;
import org.fallrule.filter.Filter;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Ratio;
import org.fallrule.method.Answer;

/**
 * How much of the rain runs off a surface: one coefficient, or one for each condition; the first that holds counts.
 *
 * @param cases the cases in the order written
 */
public record RunoffCoefficient(List<Case> cases) {

    /**
     * A coefficient and when it holds.
     *
     * @param when the condition as written; empty when there is none
     * @param holds the condition
     * @param is the coefficient with who says it
     */
    public record Case(String when, Filter holds, Stated<Ratio> is) {}

    public RunoffCoefficient {
        cases = List.copyOf(cases);
    }

    /** The coefficient in a setting; none where a condition asks what is not known before another holds. */
    Answer<Stated<Ratio>> in(Setting setting, String surface) {
        for (Case each : cases) {
            Truth holds = each.holds.test(setting::value);
            if (holds == Truth.TRUE) {
                return Answer.of(each.is);
            }
            if (holds == Truth.UNKNOWN) {
                return Answer.none("the runoff coefficient of " + surface + " hangs on " + lacking(each, setting) + " ("
                        + each.is.setBy().fileAndLine() + "), which is not known");
            }
        }
        return Answer.none(
                "no case of the runoff coefficient of " + surface + " holds; give one without a condition last");
    }

    private static String lacking(Case each, Setting setting) {
        return String.join(
                " and ",
                each.holds.names().stream()
                        .filter(name -> setting.value(name).isEmpty())
                        .sorted()
                        .toList());
    }
}
