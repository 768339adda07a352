package org.fallrule.hydrology;

import java.util.List;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Ratio;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * An area that drains to one place, with the share of the rain that runs off it.
 *
 * @param area the whole area
 * @param coefficient its mean runoff coefficient, weighted by area
 */
public record CompositeRunoff(Area area, Ratio coefficient) {
    public static final Method METHOD = Method.named(
                    "composite_runoff",
                    "Composite runoff coefficient",
                    "One runoff coefficient for an area of several surfaces, weighted by area.")
            .formula("C = sum(Cj Aj) / sum(Aj)")
            .symbol("C", "runoff coefficient of the whole", "")
            .symbol("Cj", "runoff coefficient of a part", "")
            .symbol("Aj", "area of the part", "any")
            .source("FHWA HEC-22, Urban Drainage Design Manual, 3rd edition (2009), equation 3-2 (from memory)")
            .limit("Each coefficient from 0 to 1, each area above zero; else there is no answer.")
            .limit("Areas are taken as drawn; rounding them to 0.01 acre first moves the flow in the third digit.");

    /** A part with one surface. */
    public record Part(Area area, Ratio coefficient) {}

    /** The whole of several parts, or what is wrong with them. */
    public static Answer<CompositeRunoff> of(List<Part> parts) {
        if (parts.isEmpty()) {
            return Answer.none("no area drains here");
        }
        double squareMetres = 0;
        double effective = 0;
        for (Part part : parts) {
            double coefficient = part.coefficient().value();
            if (coefficient < 0 || coefficient > 1 + Dimension.RATIO.tolerance()) {
                return Answer.none("a runoff coefficient lies between 0 and 1, found " + Printed.trimmed(coefficient));
            }
            if (part.area().squareMetres() <= 0) {
                return Answer.none("an area that drains must be above zero, found "
                        + Printed.trimmed(part.area().squareMetres()) + " m2");
            }
            squareMetres += part.area().squareMetres();
            effective += part.area().squareMetres() * Math.min(1, coefficient);
        }
        return Answer.of(new CompositeRunoff(new Area(squareMetres), new Ratio(effective / squareMetres)));
    }

    /** The area that would give the same water if all rain ran off it, in square metres. */
    double effectiveSquareMetres() {
        return area.squareMetres() * coefficient.value();
    }
}
