package org.fallrule.report.map;

import org.fallrule.site.Feature;

/** What drawings and lists call a feature, so that one leads to the other. */
public final class FeatureName {
    private static final int LENGTH = 120;

    private FeatureName() {}

    /** As sentences call it, {@code outfall OF-1}, free of what would disturb a page, and clipped where it is very long. */
    public static String of(Feature feature) {
        return PlainText.clipped(feature.spoken(), LENGTH);
    }
}
