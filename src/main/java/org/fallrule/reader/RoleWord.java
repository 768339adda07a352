package org.fallrule.reader;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Fault;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.site.Role;

/** Reads the word for a role; one that is none is a fault, with the roles that there are. */
final class RoleWord {
    private RoleWord() {}

    static Optional<Role> read(Node.Scalar word, List<Fault> faults) {
        return read(word.text(), word.place(), faults);
    }

    static Optional<Role> read(String word, Place where, List<Fault> faults) {
        Optional<Role> role = Role.named(word);
        if (role.isEmpty()) {
            faults.add(new Fault(
                    where,
                    "unknown role " + Excerpt.of(word) + hint(word) + " Known: " + String.join(", ", Role.words())));
        }
        return role;
    }

    /** {@code ; did you mean walk?} of {@code sidewalk}, as well as of {@code wlk}. */
    static String hint(String word) {
        return OfficeWords.role(word)
                .map(role -> "; did you mean " + role.word() + "?")
                .orElseGet(() -> Nearest.hint(word, Role.words()));
    }
}
