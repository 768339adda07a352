package org.fallrule.review;

import java.util.List;
import java.util.Optional;
import org.fallrule.check.Need;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;

/** Says once for a rule what the plan lacks for it. */
final class Needs {
    private Needs() {}

    /** The answer to a rule whose check lacks something; nothing when it lacks nothing. Absence that is stated comes first. */
    static Optional<Observation> unmet(List<Need> needs, Site site, Optional<GroundSurface> ground) {
        Optional<Observation> absent = needs.stream()
                .map(need -> statedAbsent(need, site))
                .flatMap(Optional::stream)
                .findFirst();
        if (absent.isPresent()) {
            return absent;
        }
        return needs.stream()
                .map(need -> missing(need, site, ground))
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

    private static Optional<Missing> missing(Need need, Site site, Optional<GroundSurface> ground) {
        if (need instanceof Need.OfLayer layer && site.features(layer.role()).isEmpty()) {
            return Optional.of(layerMissing(layer.role(), site));
        }
        if (need instanceof Need.OfGround && ground.isEmpty()) {
            return Optional.of(
                    new Missing("the ground", "supply a spot layer: three or more spot elevations around the pipes"));
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
