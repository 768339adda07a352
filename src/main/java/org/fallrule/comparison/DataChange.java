package org.fallrule.comparison;

import java.util.Locale;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;

/**
 * Something that the two states of a site say differently.
 *
 * @param kind what kind of difference
 * @param about what it is of: {@code outfall OF-1}, {@code the utility layer}, {@code the survey}
 * @param feature the feature, as it is or, where it is no more, as it was
 * @param what what of it has changed, such as an attribute's name; empty when it is the whole
 * @param from as it was, in words; empty when nothing was said
 * @param to as it is; empty when nothing is said
 * @param by how far it has moved
 */
public record DataChange(
        Kind kind,
        String about,
        Optional<Feature> feature,
        String what,
        Optional<String> from,
        Optional<String> to,
        Optional<Moved> by) {

    /**
     * How far something has moved.
     *
     * @param by the length; negative where it has sunk
     * @param shown its amount as printed, in the unit of the plan
     */
    public record Moved(Length by, String shown) {}

    /** The kinds of differences, in the order of a report. */
    public enum Kind {
        /** Which rules a state names, its coordinate system, its survey. */
        SITE("about the site"),
        LAYER("layers"),
        ADDED("added"),
        REMOVED("removed"),
        RENAMED("renamed"),
        MOVED("moved"),
        ATTRIBUTE("said otherwise");

        private final String spoken;

        Kind(String spoken) {
            this.spoken = spoken;
        }

        /** The word in files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public String spoken() {
            return spoken;
        }
    }

    static DataChange of(Kind kind, Feature feature) {
        return new DataChange(
                kind, feature.spoken(), Optional.of(feature), "", Optional.empty(), Optional.empty(), Optional.empty());
    }

    static DataChange said(
            Kind kind,
            String about,
            Optional<Feature> feature,
            String what,
            Optional<String> from,
            Optional<String> to) {
        return new DataChange(kind, about, feature, what, from, to, Optional.empty());
    }

    /** @param plan the plan as it is, for its unit */
    static DataChange moved(Feature feature, String way, Length by, Site plan) {
        return new DataChange(
                Kind.MOVED,
                feature.spoken(),
                Optional.of(feature),
                way,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Moved(by, plan.printed(Math.abs(by.metres())))));
    }
}
