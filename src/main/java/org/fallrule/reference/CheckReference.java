package org.fallrule.reference;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Parameter;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.site.Role;

/** The page of a check, in Markdown. */
public final class CheckReference {
    private CheckReference() {}

    public static String page(Check check) {
        CheckPage page = check.page();
        StringBuilder text = new StringBuilder();
        text.append("# ").append(check.name()).append("\n\n");
        text.append(page.measures()).append("\n\n");
        section(text, "Formula", page.formula());
        section(text, "Source", page.source());
        text.append("## Keys of a rule\n\n");
        text.append("| key | holds | meaning |\n| --- | --- | --- |\n");
        check.parameters().forEach(parameter -> rows(text, parameter));
        text.append("\n## What it cannot see\n\n");
        page.blindTo().forEach(each -> text.append("- ").append(each).append('\n'));
        return text.toString();
    }

    private static void section(StringBuilder text, String title, String words) {
        text.append("## ").append(title).append("\n\n").append(words).append("\n\n");
    }

    private static void rows(StringBuilder text, Parameter<?> parameter) {
        String must = parameter.required() ? "" : " (optional)";
        row(text, parameter.name(), holds(parameter.form()), parameter.meaning() + must);
        parameter
                .conditionKey()
                .ifPresent(key -> row(text, key, "a condition in ECQL", "which of them; all when it is not given"));
    }

    private static void row(StringBuilder text, String key, String holds, String meaning) {
        text.append("| `")
                .append(key)
                .append("` | ")
                .append(holds)
                .append(" | ")
                .append(meaning)
                .append(" |\n");
    }

    private static String holds(Parameter.Form form) {
        if (form instanceof Parameter.Form.Features features) {
            return features.roles().equals(List.of(Role.values()))
                    ? "a role"
                    : "a role: " + features.roles().stream().map(Role::word).collect(Collectors.joining(", "));
        }
        if (form instanceof Parameter.Form.LimitOf limit) {
            return written(limit.dimension(), limit.range()) + ", or a list of `{when: condition, is: limit}`";
        }
        if (form instanceof Parameter.Form.ConditionOn on) {
            return on.workedOut().isEmpty() ? "a condition in ECQL" : "a condition in ECQL, also on " + workedOut(on);
        }
        if (form instanceof Parameter.Form.AttributesOf of) {
            return "an attribute of what `" + of.selection() + "` selects, or a list of attributes";
        }
        if (form instanceof Parameter.Form.OneOf oneOf) {
            return "one of "
                    + oneOf.words().stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
        }
        Parameter.Form.QuantityOf quantity = (Parameter.Form.QuantityOf) form;
        return written(quantity.dimension(), quantity.range());
    }

    private static String written(Dimension dimension, Range range) {
        String units = Unit.symbolsOf(dimension);
        String article = dimension == Dimension.ANGLE || dimension == Dimension.AREA ? "an " : "a ";
        return article
                + dimension.word()
                + (units.isEmpty() ? "" : " in " + units)
                + (range.isEverything() ? "" : ", " + range.spoken());
    }

    private static String workedOut(Parameter.Form.ConditionOn on) {
        return on.workedOut().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> "`" + entry.getValue() + "` of " + entry.getKey().word())
                .collect(Collectors.joining(", "));
    }
}
