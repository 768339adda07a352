package org.fallrule.proposal;

import java.util.List;

/**
 * What a search for lines has come to.
 *
 * @param proposals the lines that pass, the cheapest first
 * @param hindrances when there is none, the rules that stand in the way
 */
public record Proposals(List<Proposal> proposals, List<Hindrance> hindrances) {

    public Proposals {
        proposals = List.copyOf(proposals);
        hindrances = List.copyOf(hindrances);
    }
}
