package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.comparison.FeaturePairs.Name;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Outcome;
import org.fallrule.review.Review;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Geometry;

/** What has become of each finding: the same rule on the same things, by whatever name they go now. */
final class FindingChanges {
    private final Map<Name, Name> namesAfter;
    private final Set<Name> removed;
    private final List<FindingChange> changes = new ArrayList<>();

    private FindingChanges(FeaturePairs features) {
        this.namesAfter = features.namesAfter();
        this.removed = features.removed().stream().map(Name::of).collect(Collectors.toSet());
    }

    static List<FindingChange> of(Review before, Review after, FeaturePairs features) {
        return new FindingChanges(features).changes(before.findings(), after.findings());
    }

    /** The rule, and what it was held against what; empty names where a finding is about the whole plan. */
    private record Key(String rule, Optional<Name> subject, Optional<Name> other, String of) {}

    private List<FindingChange> changes(List<Finding> before, List<Finding> after) {
        Map<Key, List<Finding>> was = grouped(before, true);
        Map<Key, List<Finding>> is = grouped(after, false);
        List<Finding> gone = new ArrayList<>();
        List<Finding> fresh = new ArrayList<>();
        was.forEach((key, findings) -> pair(findings, is.getOrDefault(key, new ArrayList<>()), gone));
        is.values().forEach(fresh::addAll);
        regroup(gone, fresh, Grain.OTHER);
        regroup(gone, fresh, Grain.RULE_AND_SUBJECT);
        fresh.forEach(finding -> changes.add(Course.appeared(finding, wasUntold(finding, before))));
        gone.forEach(finding -> changes.add(vanished(finding, after)));
        return sorted();
    }

    /** The findings of each key, those of the earlier state under the names of the later. */
    private Map<Key, List<Finding>> grouped(List<Finding> findings, boolean earlier) {
        Map<Key, List<Finding>> groups = new LinkedHashMap<>();
        findings.forEach(
                finding -> groups.computeIfAbsent(key(finding, earlier, Grain.MEASURE), any -> new ArrayList<>())
                        .add(finding));
        return groups;
    }

    /** How much two findings must have in common to be the same. */
    private enum Grain {
        RULE_AND_SUBJECT,
        OTHER,
        MEASURE
    }

    private Key key(Finding finding, boolean earlier, Grain grain) {
        String of = finding.observation().measured().map(Measured::of).orElse("");
        return new Key(
                finding.rule(),
                finding.observation().subject().map(feature -> name(feature, earlier)),
                finding.observation()
                        .other()
                        .filter(other -> grain != Grain.RULE_AND_SUBJECT)
                        .map(feature -> name(feature, earlier)),
                grain == Grain.MEASURE ? of : "");
    }

    private Name name(Feature feature, boolean earlier) {
        Name name = Name.of(feature);
        return earlier ? namesAfter.getOrDefault(name, new Name(name.role(), name.id() + "\u0000before")) : name;
    }

    /** Pairs what one rule found on the same things, each with the nearest; what is left of the earlier goes to {@code gone}. */
    private void pair(List<Finding> before, List<Finding> after, List<Finding> gone) {
        for (Finding was : before) {
            Optional<Finding> is = after.stream().min(Comparator.comparingDouble(each -> apart(was, each)));
            if (is.isPresent()) {
                after.remove(is.get());
                changes.add(Course.of(was, is.get()));
            } else {
                gone.add(was);
            }
        }
    }

    /** What was measured, and against what, may change with what is known of a thing: then less has to be the same. */
    private void regroup(List<Finding> gone, List<Finding> fresh, Grain grain) {
        for (Finding was : List.copyOf(gone)) {
            Key key = key(was, true, grain);
            List<Finding> same = fresh.stream()
                    .filter(each ->
                            key.subject().isPresent() && key(each, false, grain).equals(key))
                    .toList();
            same.stream()
                    .min(Comparator.comparingDouble(each -> apart(was, each)))
                    .ifPresent(is -> {
                        fresh.remove(is);
                        gone.remove(was);
                        changes.add(Course.of(was, is));
                    });
        }
    }

    /** Whether the plan as a whole did not say enough for the finding's rule before. */
    private static boolean wasUntold(Finding finding, List<Finding> before) {
        return before.stream().anyMatch(each -> each.rule().equals(finding.rule()) && isUntold(each));
    }

    private static boolean isUntold(Finding finding) {
        return finding.outcome() == Outcome.CANNOT_TELL
                && finding.observation().subject().isEmpty();
    }

    private static double apart(Finding one, Finding other) {
        Optional<Geometry> where = one.observation().where().filter(place -> !place.isEmpty());
        Optional<Geometry> there = other.observation().where().filter(place -> !place.isEmpty());
        return where.isPresent() && there.isPresent()
                ? where.get().getCentroid().distance(there.get().getCentroid())
                : 0;
    }

    /** A finding without a counterpart. If the plan no longer says enough for its rule, it is not settled but hidden. */
    private FindingChange vanished(Finding was, List<Finding> after) {
        Optional<Finding> untold = after.stream()
                .filter(each -> each.rule().equals(was.rule()) && isUntold(each))
                .findFirst();
        if (untold.isPresent() && was.outcome() != Outcome.CANNOT_TELL) {
            return new FindingChange(
                    Change.WORSE, Optional.of(was), untold, was.outcome().spoken() + ", now no longer told");
        }
        return Course.vanished(was, why(was, after));
    }

    private String why(Finding was, List<Finding> after) {
        Optional<Feature> lost = was.observation()
                .subject()
                .filter(feature -> removed.contains(Name.of(feature)))
                .or(() -> was.observation().other().filter(feature -> removed.contains(Name.of(feature))));
        if (lost.isPresent()) {
            return lost.get().spoken() + " is no longer in the plan";
        }
        if (isUntold(was)) {
            return "the plan says enough now";
        }
        boolean asked = after.stream().anyMatch(each -> each.rule().equals(was.rule()));
        return asked ? "no longer found" : "its rule is no longer applied";
    }

    private List<FindingChange> sorted() {
        return changes.stream()
                .sorted(Comparator.comparing(FindingChange::change)
                        .thenComparing(change -> !change.isOpen())
                        .thenComparing(change -> change.shown().weight())
                        .thenComparing(change -> change.shown().outcome()))
                .toList();
    }
}
