package org.fallrule.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.site.Role;

/** Settles which of several files a layer comes from. Two that show the same thing must not both count. */
final class OneSource {
    /** Roles that commonly come in several files, each with a part. */
    private static final Set<Role> IN_PARTS = Set.of(Role.UTILITY, Role.WATER_BODY, Role.EASEMENT);

    private static final String ALL = "all of them";

    private final Ledger ledger;
    private final Role role;

    OneSource(Ledger ledger, Role role) {
        this.ledger = ledger;
        this.role = role;
    }

    List<Placement> of(List<Placement> several) {
        if (several.size() == 1 || IN_PARTS.contains(role)) {
            return several;
        }
        List<String> choices = new ArrayList<>(
                several.stream().map(each -> each.table().source()).toList());
        String asks = "which is the " + role.spoken() + " layer: " + String.join(", or ", choices) + "?";
        choices.add(ALL);
        Optional<String> answer = ledger.ask(Question.choice("which." + role.word(), asks, choices));
        if (answer.isEmpty()) {
            ledger.leaveOpen(
                    asks + " Name it below, or all in a list [a, b]; then take this line away",
                    several.stream()
                            .map(each -> role.word() + ": " + SiteYaml.source(each.table()))
                            .toList());
            return List.of();
        }
        return answer.get().equals(ALL) ? several : List.of(several.get(choices.indexOf(answer.get())));
    }
}
