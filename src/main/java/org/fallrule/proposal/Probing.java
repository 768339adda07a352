package org.fallrule.proposal;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Observation;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** Stands many outfalls at once and lets each rule say which of them it is against. */
final class Probing {
    private Probing() {}

    /** Those of some outfalls that no rule is against. */
    static List<Feature> meeting(SiteAnalysis analysis, List<Rule> rules, List<Feature> probes) {
        List<Feature> standing = probes;
        for (Rule rule : rules) {
            Set<Feature> against = new HashSet<>();
            SiteAnalysis probed = analysis.with(with(analysis.site(), standing));
            for (Observation seen : rule.check().observe(probed, rule.terms())) {
                if (StandingGround.isAgainst(seen.outcome())) {
                    seen.subject().ifPresent(against::add);
                }
            }
            standing = standing.stream().filter(each -> !against.contains(each)).toList();
        }
        return standing;
    }

    private static Site with(Site site, List<Feature> outfalls) {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        layers.putAll(site.layers());
        layers.put(Role.OUTFALL, new Layer.Supplied(outfalls, List.of()));
        layers.put(Role.PIPE, new Layer.Supplied(List.of(), List.of()));
        return ProposedSite.withLayers(site, layers);
    }
}
