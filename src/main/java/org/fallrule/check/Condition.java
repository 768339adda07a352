package org.fallrule.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.fallrule.document.Fault;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Ecql;
import org.fallrule.filter.Filter;
import org.fallrule.filter.Truth;
import org.fallrule.site.Attribute;
import org.fallrule.site.AttributeName;
import org.fallrule.site.Attributes;

/**
 * A condition that a rule book puts on a feature's attributes.
 *
 * @param text the condition as the rule book writes it; empty for {@link #ALWAYS}
 * @param filter what it asks
 * @param names the attributes that it names
 */
public record Condition(String text, Filter filter, Map<String, AttributeName> names) {

    /** Holds for every feature. */
    public static final Condition ALWAYS = new Condition("", new Filter.Always(), Map.of());

    public Condition {
        names = Map.copyOf(names);
    }

    /**
     * Reads a condition in ECQL.
     *
     * @throws UnusableInput if it cannot be read or names an attribute that there is not
     */
    public static Condition parse(String text, Place where) {
        Filter filter = Ecql.parse(text, where);
        Map<String, AttributeName> names = new TreeMap<>();
        List<Fault> faults = new ArrayList<>();
        for (String name : filter.names()) {
            AttributeName.parse(name)
                    .ifPresentOrElse(
                            known -> names.put(name, known),
                            () -> faults.add(new Fault(
                                    where,
                                    "unknown attribute " + name + " in the condition " + text
                                            + Nearest.hint(name, AttributeName.all())
                                            + " A quantity is named with its unit, such as diameter_in.")));
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new Condition(text, filter, names);
    }

    public Truth test(Attributes attributes) {
        return filter.test(name -> Optional.ofNullable(names.get(name)).flatMap(known -> known.in(attributes)));
    }

    /** Whether it reads one of some attributes. */
    boolean reads(Set<Attribute<?>> attributes) {
        return names.values().stream().map(AttributeName::attribute).anyMatch(attributes::contains);
    }

    public boolean isAlways() {
        return names.isEmpty();
    }

    /** The names of the attributes that it reads and the feature lacks: {@code access}. */
    public String lacking(Attributes attributes) {
        return String.join(
                ", ",
                names.values().stream()
                        .map(AttributeName::attribute)
                        .filter(attribute -> !attributes.has(attribute))
                        .map(attribute -> attribute.name())
                        .sorted()
                        .distinct()
                        .toList());
    }
}
