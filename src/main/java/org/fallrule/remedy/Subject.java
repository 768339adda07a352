package org.fallrule.remedy;

import java.util.Optional;
import java.util.regex.Pattern;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.site.Feature;

/**
 * What a finding is about, so that it is known again in the review of a changed plan. Of a pipe that a change parts in two, the
 * parts count as the pipe.
 *
 * @param rule the rule's id
 * @param subject the feature's id; empty for the whole plan
 * @param other the id of what it was measured against
 * @param of what was measured; a pipe may have two measures under one rule
 */
record Subject(String rule, String subject, String other, String of) {
    /** Stands between a pipe's id and the number of its part. */
    static final String PART = "~";

    private static final Pattern PART_OF = Pattern.compile("(" + PART + "\\d+)+$");

    static Subject of(Finding finding) {
        Observation seen = finding.observation();
        return new Subject(
                finding.rule(),
                seen.subject().map(Subject::name).orElse(""),
                seen.other().map(Subject::name).orElse(""),
                seen.measured().map(measured -> measured.of()).orElse(""));
    }

    private static String name(Feature feature) {
        return feature.role().word() + " " + whole(feature.id());
    }

    private static String whole(String id) {
        return PART_OF.matcher(id).replaceAll("");
    }

    /** Whether another finding could be the answer to this one once the plan is changed: the same rule, asked of the same thing. */
    boolean isAnsweredBy(Subject after) {
        boolean sameOther = other.equals(after.other) || other.isEmpty() || after.other.isEmpty();
        return rule.equals(after.rule) && subject.equals(after.subject) && sameOther;
    }

    /** Whether a feature may be the subject: it is, or a part of it, or of another role so that nothing is said of it. */
    boolean mayBe(Feature feature) {
        return !subject.startsWith(feature.role().word() + " ") || subject.equals(name(feature));
    }

    static Optional<Feature> feature(Finding finding) {
        return finding.observation().subject();
    }
}
