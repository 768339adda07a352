package org.fallrule.hydrology;

import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.method.Answer;

/** A flow path over ground that falls. The formulas of overland flow have no answer for any other. */
record Overland(Length length, Slope slope) {

    static Answer<Overland> sound(Length length, Slope slope) {
        if (length.metres() <= 0) {
            return Answer.none("the flow path has no length");
        }
        if (slope.ratio() <= 0) {
            return Answer.none("the flow path does not fall; the formula needs a slope above zero");
        }
        return Answer.of(new Overland(length, slope));
    }
}
