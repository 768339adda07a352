package org.fallrule.locality;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fallrule.measure.Ratio;
import org.fallrule.method.Answer;

/**
 * How much of the rain runs off each surface.
 *
 * @param surfaces the coefficients by surface: {@code roof}, {@code lawn}
 */
public record Runoff(SortedMap<String, RunoffCoefficient> surfaces) {

    public static final Runoff UNSAID = new Runoff(new TreeMap<>());

    public Runoff {
        surfaces = Collections.unmodifiableSortedMap(new TreeMap<>(surfaces));
    }

    /** The coefficient of a surface and who says it, or why there is none. */
    public Answer<Stated<Ratio>> coefficient(String surface, Setting setting) {
        return Optional.ofNullable(surfaces.get(surface))
                .map(found -> found.in(setting, surface))
                .orElseGet(() -> Answer.none("the rule books give no runoff coefficient for " + surface + "; known: "
                        + (surfaces.isEmpty() ? "none" : String.join(", ", surfaces.keySet()))));
    }

    /** This with what a later book says laid over it, surface by surface. */
    public Runoff overlaid(Runoff over) {
        SortedMap<String, RunoffCoefficient> both = new TreeMap<>(surfaces);
        both.putAll(over.surfaces);
        return new Runoff(both);
    }
}
