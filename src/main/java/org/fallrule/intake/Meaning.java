package org.fallrule.intake;

import java.util.Optional;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/**
 * What a word or code may stand for.
 *
 * @param role the role, or none for what a plan's check has no use for
 * @param kind the kind of it, or for walks whether they are public
 * @param spoken the same in words
 */
record Meaning(Optional<Role> role, Optional<String> kind, String spoken) {

    /** Reads {@code inlet basin}, {@code cleanout}, or {@code - gas meter} for what is of no use. */
    static Meaning of(String text) {
        if (text.startsWith("- ")) {
            return new Meaning(Optional.empty(), Optional.empty(), text.substring(2));
        }
        String[] words = text.split(" ", 2);
        Role role = Role.named(words[0]).orElseThrow(() -> new IllegalStateException("no role " + words[0]));
        Optional<String> kind = words.length > 1 ? Optional.of(words[1]) : Optional.empty();
        return new Meaning(Optional.of(role), kind, kind.map(word -> word + " ").orElse("") + role.spoken());
    }

    /** The attribute that the kind is a value of. */
    static Attribute<String> attribute(Role role) {
        return role == Role.WALK ? Attribute.ACCESS : Attribute.KIND;
    }

    boolean is(Role other) {
        return role.filter(other::equals).isPresent();
    }
}
