package org.fallrule.comparison;

import org.fallrule.site.Feature;

/**
 * One thing in both states of a site.
 *
 * @param before as it was
 * @param after as it is
 */
public record FeaturePair(Feature before, Feature after) {

    /** Whether it goes by another name now; names that the program made up are none. */
    public boolean isRenamed() {
        return !before.id().equals(after.id()) && isNamed(before) && isNamed(after);
    }

    /** Whether the plan itself names the feature; {@code #3} is the third of its file, which the next edit may move. */
    static boolean isNamed(Feature feature) {
        return !feature.id().startsWith("#");
    }
}
