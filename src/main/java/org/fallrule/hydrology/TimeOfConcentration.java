package org.fallrule.hydrology;

import java.util.List;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * How long the farthest water takes to a place.
 *
 * @param travelled the sum of the times along the way
 * @param counting the duration of rain that counts, no less than the storm's shortest
 */
public record TimeOfConcentration(Time travelled, Time counting) {
    public static final Method METHOD = Method.named(
                    "time_of_concentration",
                    "Time of concentration",
                    "The time that the farthest water takes to a place, part by part, and the duration that counts for"
                            + " it.")
            .formula("tc = t1 + t2 + ... + tm")
            .formula("t = max(tc, td)")
            .symbol("tc", "time of concentration", "min")
            .symbol("t1 ... tm", "travel times of the parts: sheet, shallow concentrated, swale, pipe", "min")
            .symbol("td", "shortest duration that the rule book lets count", "min")
            .symbol("t", "duration of the design rain", "min")
            .source(
                    "NRCS (SCS), TR-55, Urban Hydrology for Small Watersheds, 2nd edition (1986), chapter 3 (from memory)")
            .source(
                    "A shortest duration of 5 minutes is usual on paved and small sites: FHWA HEC-22, 3rd edition (2009),"
                            + " section 3.2.2.3 (from memory); the rule book sets it.")
            .limit("When one part has no answer, the sum has none.");

    /** The sum of the parts under a design storm, or why there is none. */
    public static Answer<TimeOfConcentration> of(List<Answer<Time>> parts, DesignStorm storm) {
        double seconds = 0;
        for (Answer<Time> part : parts) {
            if (part.value().isEmpty()) {
                return Answer.none(part.why());
            }
            seconds += part.value().get().seconds();
        }
        Time travelled = new Time(seconds);
        return Answer.of(new TimeOfConcentration(travelled, storm.duration(travelled)));
    }
}
