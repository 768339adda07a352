package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.rulebook.AsBuiltTolerances.Measure;

/**
 * Two states of a site held against each other.
 *
 * @param before the earlier state
 * @param after the later state; its rules were applied, and its frame is that of both
 * @param features which features are the same thing
 * @param findings what has become of each finding, those for the worse first
 * @param data what the states say differently
 * @param asBuilt the work as built against its design; empty when the later state shows none
 * @param problems what a reader should know of the comparison itself
 */
public record Comparison(
        Submittal before,
        Submittal after,
        FeaturePairs features,
        List<FindingChange> findings,
        List<DataChange> data,
        List<Finding> asBuilt,
        List<Fault> problems) {

    public Comparison {
        findings = List.copyOf(findings);
        data = List.copyOf(data);
        asBuilt = List.copyOf(asBuilt);
        problems = List.copyOf(problems);
    }

    /**
     * Compares two states.
     *
     * @param before the earlier state, in the local frame of the later
     */
    public static Comparison of(Submittal before, Submittal after) {
        FeaturePairs features = FeaturePairs.of(before.site(), after.site());
        BuiltWork built = new BuiltWork(after.analysis(), features);
        boolean asBuilt = after.isAsBuilt();
        List<Fault> problems = new ArrayList<>();
        if (asBuilt) {
            problems.addAll(built.problems(AsBuiltFindings.designs(before.analysis())));
            problems.addAll(withoutTolerance(after));
        }
        return new Comparison(
                before,
                after,
                features,
                after.isPlan() ? FindingChanges.of(before.review(), after.review(), features) : List.of(),
                after.isPlan() ? DataChanges.of(before.site(), after.site(), features, asBuilt) : List.of(),
                asBuilt
                        ? AsBuiltFindings.of(
                                before.analysis(), built, after.book().asBuilt())
                        : List.of(),
                problems);
    }

    private static List<Fault> withoutTolerance(Submittal after) {
        return Stream.of(Measure.values())
                .filter(measure -> after.book().asBuilt().of(measure).isEmpty())
                .map(measure -> new Fault(
                        Place.of("as_built").field(measure.word()),
                        "no rule book says how far it may lie from the design, so it was not checked; give it there"))
                .toList();
    }

    /** The findings that have changed in one way. */
    public List<FindingChange> with(Change change) {
        return findings.stream().filter(each -> each.change() == change).toList();
    }

    /** The values of the work as built that lie beyond their tolerance. */
    public List<Finding> outOfTolerance() {
        return asBuilt.stream()
                .filter(finding -> finding.outcome() == Outcome.FAILS)
                .toList();
    }

    /** Whether anything got worse: a finding that is new or worse, or work beyond its tolerance. */
    public boolean gotWorse() {
        return findings.stream().anyMatch(each -> each.change().isForTheWorse())
                || !outOfTolerance().isEmpty();
    }

    /** Whether the later state fails a binding rule. */
    public boolean fails() {
        return after.review().failsPlan() || asBuilt.stream().anyMatch(Finding::failsPlan);
    }

    /** One line: what a reviewer asks first. */
    public String verdict() {
        long failing =
                after.review().findings().stream().filter(Finding::failsPlan).count();
        List<String> says = new ArrayList<>();
        if (after.isPlan()) {
            says.add(failing == 0 ? "Nothing binding fails now" : counted(failing, "binding finding") + " failing now");
            says.add(with(Change.GONE).size() + " gone");
            says.add(with(Change.NEW).size() + " new");
            says.add(with(Change.BETTER).size() + " better");
            says.add(with(Change.WORSE).size() + " worse");
        }
        if (after.isAsBuilt()) {
            says.add(
                    outOfTolerance().isEmpty()
                            ? "no value as built beyond its tolerance"
                            : counted(outOfTolerance().size(), "value") + " as built beyond tolerance");
            long untold = asBuilt.stream()
                    .filter(finding -> finding.outcome() == Outcome.CANNOT_TELL)
                    .count();
            if (untold > 0) {
                says.add(untold + " not measured");
            }
        }
        String all = String.join(", ", says);
        return all.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + all.substring(1) + ".";
    }

    private static String counted(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
