package org.fallrule.remedy;

import java.util.Map;
import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;

/** What is told of a finding that none of the changes passes. */
final class NoRemedy {
    /** Checks for whose findings no change is tried, and what is to be done instead. */
    static final Map<String, String> NOT_TRIED = Map.of(
            "stated",
            "no change of the drain helps: the plan has to show it",
            "hand_dig",
            "no change is tried: dig by hand in the zone that the mark may be off by, or lead the pipe outside of it",
            "trench_safety",
            "no change is tried: protect the trench as its depth asks, or lay the pipe less deep where its fall and cover let it",
            "joint_distance",
            "no change is tried: lay one full length of pipe with its middle at the crossing, so that its joints lie as far from"
                    + " the line as they can",
            "crossing_angle",
            "no change is tried: turn the pipe with bends on both sides of the line, so that it crosses nearer to square");

    /** What is told where changes are tried and none passes. */
    private static final Map<String, String> TRIED = Map.of(
            "ground_fall",
            "the ground beside the wall has to be raised, or cut away from it; how far could not be worked out from the ground"
                    + " that the plan gives, or is so much that it is for whoever designed the wall",
            "flow_path",
            "none of the changes tried passes; the propose command looks over the whole lot for another place to come out, and a"
                    + " curb outlet, a swale or a permit may settle it",
            "not_joined",
            "none of the changes tried passes: the drain has to end elsewhere; the propose command looks over the whole lot");

    private NoRemedy() {}

    static String says(Finding finding) {
        return Optional.ofNullable(NOT_TRIED.get(finding.check()))
                .or(() -> unknown(finding))
                .or(() -> Optional.ofNullable(TRIED.get(finding.check())))
                .orElseGet(() -> otherwise(finding));
    }

    private static Optional<String> unknown(Finding finding) {
        return finding.observation().missing().stream()
                .findFirst()
                .map(missing -> "none of the changes tried passes while this is not known: " + missing.what());
    }

    private static String otherwise(Finding finding) {
        return finding.outcome() == Outcome.BORDERLINE
                ? "none of the changes tried passes; a better survey, or a test hole where a utility is in question, would"
                        + " settle it"
                : "none of the changes tried passes";
    }
}
