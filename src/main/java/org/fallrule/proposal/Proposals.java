package org.fallrule.proposal;

import java.util.List;

/**
 * What a search for lines has come to.
 *
 * @param proposals the lines that pass, the cheapest first
 * @param hindrances when there is none, the rules that stand in the way
 * @param isRestMet when there is none, whether a line meets all rules but those that fail whatever the line
 */
public record Proposals(List<Proposal> proposals, List<Hindrance> hindrances, boolean isRestMet) {

    public Proposals {
        proposals = List.copyOf(proposals);
        hindrances = List.copyOf(hindrances);
    }
}
