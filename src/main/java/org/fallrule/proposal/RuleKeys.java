package org.fallrule.proposal;

import java.util.Optional;
import org.fallrule.check.Limits;
import org.fallrule.check.Selection;
import org.fallrule.measure.Quantity;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Role;

/**
 * What a rule tells its check, by the keys that a rule book uses. What a check of one kind asks of the ground is read from these,
 * so that every rule of the kind counts, whatever its id.
 */
record RuleKeys(Rule rule) {

    boolean isOf(String check) {
        return rule.check().name().equals(check);
    }

    Optional<Selection> selection(String key) {
        return find(key, Selection.class);
    }

    Optional<Limits> limits(String key) {
        return find(key, Limits.class);
    }

    /** A quantity in SI; nothing where the rule gives none. */
    Optional<Double> si(String key) {
        return find(key, Quantity.class).map(Quantity::si);
    }

    /** Whether the features that a key selects are of a role. */
    boolean selects(String key, Role role) {
        return selection(key).filter(selection -> selection.role() == role).isPresent();
    }

    private <T> Optional<T> find(String key, Class<T> type) {
        return rule.check().parameters().stream()
                .filter(parameter -> parameter.name().equals(key) && type.isAssignableFrom(parameter.type()))
                .findFirst()
                .flatMap(parameter -> rule.terms().find(parameter))
                .map(type::cast);
    }
}
