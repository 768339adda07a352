package org.fallrule.report;

import java.util.List;

/**
 * A computation as a reader follows it.
 *
 * @param title what is computed, and for what
 * @param steps its steps in order
 */
public record Computation(String title, List<Step> steps) {
    public Computation {
        steps = List.copyOf(steps);
    }

    /**
     * A step.
     *
     * @param name what it gives
     * @param formula in the symbols of its source
     * @param inputs each with its symbol and value as printed
     * @param result as printed, with its unit
     * @param source document and section
     */
    public record Step(String name, String formula, List<Fact> inputs, String result, String source) {
        public Step {
            inputs = List.copyOf(inputs);
        }
    }
}
