package org.fallrule.check;

import org.fallrule.site.Role;

/** Something that a check cannot do without. Where the plan lacks it, the answer is {@code cannot_tell} once for the rule. */
public sealed interface Need {

    /** A layer of the plan. */
    record OfLayer(Role role) implements Need {}

    /** A ground surface. */
    record OfGround() implements Need {}

    /** Rain to design for. */
    record OfStorm() implements Need {}

    /** To know which lot is the site's own. */
    record OfOwnLot() implements Need {}
}
