package org.fallrule.review;

import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Need;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.method.Answer;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** Says once for a rule what the plan lacks for it. */
final class Needs {
    private Needs() {}

    /** The answer to a rule whose check lacks something; nothing when it lacks nothing. Absence that is stated comes first. */
    static Optional<Observation> unmet(List<Need> needs, SiteAnalysis analysis) {
        Site site = analysis.site();
        Optional<Observation> absent = needs.stream()
                .map(need -> statedAbsent(need, site))
                .flatMap(Optional::stream)
                .findFirst();
        if (absent.isPresent()) {
            return absent;
        }
        return needs.stream()
                .map(need -> missing(need, analysis))
                .flatMap(Optional::stream)
                .distinct()
                .map(Observation::cannotTell)
                .reduce((one, other) -> one.lacking(other.missing().get(0)));
    }

    private static Optional<Observation> statedAbsent(Need need, Site site) {
        return need instanceof Need.OfLayer layer && site.layer(layer.role()) instanceof Layer.StatedAbsent absent
                ? Optional.of(Observation.notApplicable("the plan states that there is no "
                        + layer.role().spoken() + " (" + absent.by().fileAndLine() + ")"))
                : Optional.empty();
    }

    private static Optional<Missing> missing(Need need, SiteAnalysis analysis) {
        Site site = analysis.site();
        if (need instanceof Need.OfLayer layer && site.features(layer.role()).isEmpty()) {
            return Optional.of(layerMissing(layer.role(), site));
        }
        if (need instanceof Need.OfGround && analysis.ground().isEmpty()) {
            return Optional.of(
                    new Missing("the ground", "supply a spot layer: three or more spot elevations around the pipes"));
        }
        if (need instanceof Need.OfStorm && analysis.water().storm() instanceof Answer.None<DesignStorm> none) {
            return Optional.of(new Missing("the rain to design for (" + none.why() + ")", "give what is named there"));
        }
        if (need instanceof Need.OfOwnLot
                && site.ownLot().isEmpty()
                && !site.features(Role.LOT).isEmpty()) {
            return Optional.of(new Missing("which lot is the site's own", "mark one lot with own = true"));
        }
        return Optional.empty();
    }

    private static Missing layerMissing(Role role, Site site) {
        boolean empty = site.layer(role) instanceof Layer.Supplied;
        return new Missing(
                "the " + role.spoken() + " layer" + (empty ? ", which is empty" : ""),
                "supply it, or list " + role.word() + " under absent in site.yaml if there is none");
    }
}
