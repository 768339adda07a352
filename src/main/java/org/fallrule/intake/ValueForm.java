package org.fallrule.intake;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;

/** Whether the values of a column can be those of an attribute. */
final class ValueForm {
    private static final Set<String> FLAGS = Set.of("true", "yes", "y", "t", "1", "false", "no", "n", "f", "0");

    private ValueForm() {}

    /** Whether they are of the attribute's kind: quantities, flags or words. A column without values is of no kind. */
    static boolean as(Attribute<?> attribute, List<Object> values) {
        if (values.isEmpty()) {
            return false;
        }
        if (attribute.dimension().isPresent()) {
            Dimension dimension = attribute.dimension().get();
            return values.stream().allMatch(value -> isBare(value) || isWritten(value, dimension));
        }
        if (attribute.type() == Boolean.class) {
            return values.stream()
                    .allMatch(value -> FLAGS.contains(Cells.text(value).toLowerCase(Locale.ROOT)));
        }
        return attribute == Attribute.ID
                || attribute == Attribute.LINE
                || attribute == Attribute.SEQUENCE
                || values.stream().allMatch(String.class::isInstance);
    }

    /** Whether a value is a number without a unit. */
    static boolean isBare(Object value) {
        return value instanceof Number || Cells.text(value).matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    }

    private static boolean isWritten(Object value, Dimension dimension) {
        try {
            Written.parse(Cells.text(value), dimension);
            return true;
        } catch (UnreadableQuantity e) {
            return false;
        }
    }
}
