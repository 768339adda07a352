package org.fallrule.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/**
 * Something that a rule book tells a check, under a key of the rule.
 *
 * @param <T> the type of the value that the check gets
 * @param name the key
 * @param form what may be written there
 * @param type the type of the value
 * @param required whether every rule must give it
 * @param asksLess whether a rule that gives it asks less than one that leaves it out, such as a stretch to look along
 * @param meaning what it means
 */
public record Parameter<T>(String name, Form form, Class<T> type, boolean required, boolean asksLess, String meaning) {

    /** What may be written under a parameter's key. */
    public sealed interface Form {
        /** A role, with a condition under the key {@code NAME_where}. */
        record Features(List<Role> roles) implements Form {
            public Features {
                roles = List.copyOf(roles);
            }
        }

        /** A quantity with its unit, or a list of {@code {when, is}}. */
        record LimitOf(Bound bound, Dimension dimension, Range range) implements Form {}

        /** A quantity with its unit. */
        record QuantityOf(Dimension dimension, Range range) implements Form {}

        /** A condition in ECQL on the features that another parameter selects, and on what is worked out of them. */
        record ConditionOn(String selection, Map<Role, Attribute<?>> workedOut) implements Form {
            public ConditionOn {
                workedOut = Map.copyOf(workedOut);
            }
        }

        /** The name of an attribute, or a list of names, of the features that another parameter selects. */
        record AttributesOf(String selection) implements Form {}

        /** One of these words. */
        record OneOf(List<String> words) implements Form {
            public OneOf {
                words = List.copyOf(words);
            }
        }
    }

    public static Parameter<Selection> features(String name, String meaning, Role... roles) {
        return new Parameter<>(name, new Form.Features(List.of(roles)), Selection.class, true, false, meaning);
    }

    public static Parameter<Limits> limit(String name, Bound bound, Dimension dimension, String meaning) {
        Form form = new Form.LimitOf(bound, dimension, Range.FROM_ZERO);
        return new Parameter<>(name, form, Limits.class, false, false, meaning);
    }

    public static Parameter<Quantity> quantity(String name, Dimension dimension, String meaning) {
        Form form = new Form.QuantityOf(dimension, Range.FROM_ZERO);
        return new Parameter<>(name, form, Quantity.class, false, false, meaning);
    }

    /** One of some words. */
    public static Parameter<String> oneOf(String name, List<String> words, String meaning) {
        return new Parameter<>(name, new Form.OneOf(words), String.class, false, false, meaning);
    }

    /** A condition on the features that another parameter selects; what is worked out of a role can stand in it too. */
    public static Parameter<Condition> condition(
            String name, Parameter<Selection> on, Map<Role, Attribute<?>> workedOut, String meaning) {
        return new Parameter<>(name, new Form.ConditionOn(on.name(), workedOut), Condition.class, true, false, meaning);
    }

    /** Attributes of the features that another parameter selects. */
    public static Parameter<AttributeList> attributes(String name, Parameter<Selection> of, String meaning) {
        return new Parameter<>(name, new Form.AttributesOf(of.name()), AttributeList.class, false, false, meaning);
    }

    /** The same limit or quantity, of which only these amounts make sense. */
    public Parameter<T> within(Range range) {
        Form narrowed = form instanceof Form.LimitOf limit
                ? new Form.LimitOf(limit.bound(), limit.dimension(), range)
                : new Form.QuantityOf(((Form.QuantityOf) form).dimension(), range);
        return new Parameter<>(name, narrowed, type, required, asksLess, meaning);
    }

    /** The same parameter, which every rule must give. */
    public Parameter<T> always() {
        return new Parameter<>(name, form, type, true, asksLess, meaning);
    }

    /** The same parameter, which takes something off what the rule asks when it is given. */
    public Parameter<T> thatAsksLess() {
        return new Parameter<>(name, form, type, required, true, meaning);
    }

    /** The key of the condition that goes with a selection. */
    public Optional<String> conditionKey() {
        return form instanceof Form.Features ? Optional.of(name + "_where") : Optional.empty();
    }
}
