package org.fallrule.finding;

import org.fallrule.document.Place;

/**
 * An observation under the rule that asked for it.
 *
 * @param rule the rule's id
 * @param title what the rule asks, in a few words
 * @param check the check that measured
 * @param weight what hangs on it
 * @param basis what the rule rests on
 * @param setBy the line of the rule book that set what was asked
 * @param observation the facts
 */
public record Finding(
        String rule, String title, String check, Weight weight, Basis basis, Place setBy, Observation observation) {

    public Outcome outcome() {
        return observation.outcome();
    }

    /** Whether this fails the plan. */
    public boolean failsPlan() {
        return weight == Weight.MUST && outcome() == Outcome.FAILS;
    }

    public Finding with(Observation newObservation) {
        return new Finding(rule, title, check, weight, basis, setBy, newObservation);
    }
}
