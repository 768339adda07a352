package org.fallrule.hydrology;

import java.util.List;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** The peak of what runs off a small area. */
public final class RationalMethod {
    public static final Method METHOD = Method.named(
                    "rational_method",
                    "Rational method",
                    "The peak flow that a steady rain brings from a small area when all of it contributes.")
            .formula("Q = C i A / Ku")
            .symbol("Q", "peak flow", "ft3/s (m3/s)")
            .symbol("C", "runoff coefficient", "")
            .symbol("i", "intensity over the time of concentration", "in/h (mm/h)")
            .symbol("A", "area", "acre (ha)")
            .symbol("Ku", "1/1.00833, usually written as 1 (360)", "")
            .source("FHWA HEC-22, Urban Drainage Design Manual, 3rd edition (2009), equation 3-1 (from memory)")
            .limit("1 acre inch in an hour is 1.00833 ft3/s. It is kept here; sheets in US units drop it, so that they"
                    + " come out 0.8 % lower.")
            .limit("C from 0 to 1, area and intensity above zero; else there is no answer.")
            .limit("For areas up to about 200 acres (from memory) with no storage to speak of; far above any lot.");

    /** What a sheet in acres, inches and hours leaves out: 43,560 square feet in an acre for 43,200. */
    static final double DROPPED_BY_US_SHEETS = 43_560.0 / 43_200.0;

    private RationalMethod() {}

    /** The peak flow, or why there is none. */
    public static Answer<Flow> flow(CompositeRunoff runoff, Intensity intensity) {
        if (intensity.metresPerSecond() <= 0) {
            return Answer.none("an intensity must be above zero");
        }
        return CompositeRunoff.of(List.of(new CompositeRunoff.Part(runoff.area(), runoff.coefficient())))
                .map(sound -> new Flow(sound.effectiveSquareMetres() * intensity.metresPerSecond()));
    }
}
