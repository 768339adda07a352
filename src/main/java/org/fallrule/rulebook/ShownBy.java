package org.fallrule.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.check.Condition;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** How a plan, given as files, shows an item of a checklist. */
public sealed interface ShownBy {

    /** No file shows it: a person puts it on the sheet. */
    record ByHand() implements ShownBy {}

    /**
     * Features of a role that satisfy a condition, each with certain attributes.
     *
     * @param role the role
     * @param where the condition
     * @param known what the plan must say of each
     */
    record Features(Role role, Condition where, List<Attribute<?>> known) implements ShownBy {
        public Features {
            known = List.copyOf(known);
        }
    }

    /** A fact about the site. */
    record Stated(SiteFact fact) implements ShownBy {}

    /** Something that the report itself draws or lists. */
    record Reported(Part part) implements ShownBy {}

    /** All of several. */
    record AllOf(List<ShownBy> parts) implements ShownBy {
        public AllOf {
            parts = List.copyOf(parts);
        }
    }

    /** One of several. */
    record AnyOf(List<ShownBy> parts) implements ShownBy {
        public AnyOf {
            parts = List.copyOf(parts);
        }
    }

    /** The facts about a site. */
    enum SiteFact {
        NAME,
        COORDINATES,
        DATUM,
        SURVEY_DATE,
        SURVEY_SOURCE;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<SiteFact> named(String word) {
            return Arrays.stream(values())
                    .filter(fact -> fact.word().equals(word))
                    .findFirst();
        }
    }

    /** The parts of a report that can show something. */
    enum Part {
        PLAN,
        LONG_SECTIONS,
        PIPE_TABLE;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Part> named(String word) {
            return Arrays.stream(values())
                    .filter(part -> part.word().equals(word))
                    .findFirst();
        }
    }
}
