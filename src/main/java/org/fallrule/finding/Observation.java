package org.fallrule.finding;

import java.util.List;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Geometry;

/**
 * What a check has to say of one thing in the plan.
 *
 * @param outcome how it stands
 * @param subject what it is about; empty when it is about the whole plan
 * @param other what it was measured against
 * @param measured the value and its limit
 * @param where the place, line or area that was measured, in the local frame
 * @param missing what the plan does not say
 * @param notes facts that belong beside it, each a clause such as {@code at station 0+41.7}
 * @param told a clause that says what happened, where "subject: value, limit asked" would read badly; it stands for these in the
 *     sentence and adds no fact
 */
public record Observation(
        Outcome outcome,
        Optional<Feature> subject,
        Optional<Feature> other,
        Optional<Measured> measured,
        Optional<Geometry> where,
        List<Missing> missing,
        List<String> notes,
        Optional<String> told) {

    public Observation {
        missing = List.copyOf(missing);
        notes = List.copyOf(notes);
    }

    /** A value held against its limit; the limit decides the outcome. */
    public static Observation measured(Feature subject, Measured measured) {
        Outcome outcome = measured.limit()
                .map(limit -> Outcome.of(limit.standing(measured.value(), measured.accuracy())))
                .orElse(Outcome.MEETS);
        return new Observation(
                outcome,
                Optional.of(subject),
                Optional.empty(),
                Optional.of(measured),
                Optional.of(subject.geometry()),
                List.of(),
                List.of(),
                Optional.empty());
    }

    /** Something that is simply so or not. */
    public static Observation plain(Outcome outcome, Feature subject) {
        return new Observation(
                outcome,
                Optional.of(subject),
                Optional.empty(),
                Optional.empty(),
                Optional.of(subject.geometry()),
                List.of(),
                List.of(),
                Optional.empty());
    }

    public static Observation cannotTell(Feature subject, Missing missing) {
        return plain(Outcome.CANNOT_TELL, subject).lacking(missing);
    }

    /** About the whole plan: it lacks what the rule needs. */
    public static Observation cannotTell(Missing missing) {
        return ofPlan(Outcome.CANNOT_TELL).lacking(missing);
    }

    /** About the whole plan: there is nothing in it that the rule speaks of. */
    public static Observation notApplicable(String why) {
        return ofPlan(Outcome.NOT_APPLICABLE).noting(why);
    }

    /** About the whole plan. */
    public static Observation ofPlan(Outcome outcome) {
        return new Observation(
                outcome,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    public Observation against(Feature newOther) {
        return new Observation(outcome, subject, Optional.of(newOther), measured, where, missing, notes, told);
    }

    public Observation at(Geometry newWhere) {
        return new Observation(outcome, subject, other, measured, Optional.of(newWhere), missing, notes, told);
    }

    public Observation noting(String note) {
        return new Observation(outcome, subject, other, measured, where, missing, append(notes, note), told);
    }

    public Observation lacking(Missing more) {
        return new Observation(outcome, subject, other, measured, where, append(missing, more), notes, told);
    }

    /** The same as a bare fact: noted, and not held against the plan. What cannot be told stays so. */
    public Observation asNote() {
        Outcome noted = outcome == Outcome.FAILS || outcome == Outcome.BORDERLINE ? Outcome.MEETS : outcome;
        return new Observation(noted, subject, other, measured.map(Measured::asFact), where, missing, notes, told);
    }

    /** The same of a plan in metres, for whose values without a limit metric units are usual. */
    public Observation inMetres() {
        return new Observation(outcome, subject, other, measured.map(Measured::inMetres), where, missing, notes, told);
    }

    public Observation with(Outcome newOutcome) {
        return new Observation(newOutcome, subject, other, measured, where, missing, notes, told);
    }

    /** The same with a clause that says what happened. */
    public Observation telling(String clause) {
        return new Observation(outcome, subject, other, measured, where, missing, notes, Optional.of(clause));
    }

    private static <T> List<T> append(List<T> list, T item) {
        return java.util.stream.Stream.concat(list.stream(), java.util.stream.Stream.of(item))
                .toList();
    }
}
