package org.fallrule.verification;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.fallrule.check.Parameter;
import org.fallrule.document.Node;
import org.fallrule.document.Yaml;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Written;
import org.fallrule.rulebook.Checks;

/** The values that the baseline's rules write. */
final class BaselineValues {
    private static final Node.Mapping RULES =
            mapping(Yaml.read(Path.of("rules/baseline.yaml"), "rules/baseline.yaml"), "rules");

    private BaselineValues() {}

    /** The quantities under a key of a rule, those of each case of a limit. */
    static List<Written> of(String rule, String key) {
        return words(node(mapping(RULES, rule), key))
                .filter(word -> !word.equals("none"))
                .map(word -> quantity(word, rule, key))
                .toList();
    }

    /** A quantity of the dimension that a key of a rule takes. */
    static Written quantity(String text, String rule, String key) {
        String check = ((Node.Scalar) node(mapping(RULES, rule), "check")).text();
        Parameter.Form form = Checks.all().named(check).orElseThrow().parameters().stream()
                .filter(parameter -> parameter.name().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("the check " + check + " takes no " + key))
                .form();
        return Written.parse(text, dimension(form));
    }

    private static Dimension dimension(Parameter.Form form) {
        if (form instanceof Parameter.Form.LimitOf limit) {
            return limit.dimension();
        }
        return ((Parameter.Form.QuantityOf) form).dimension();
    }

    private static Stream<String> words(Node value) {
        if (value instanceof Node.Sequence cases) {
            return cases.items().stream().flatMap(each -> words(node((Node.Mapping) each, "is")));
        }
        return Stream.of(((Node.Scalar) value).text());
    }

    private static Node.Mapping mapping(Node.Mapping of, String key) {
        return (Node.Mapping) node(of, key);
    }

    private static Node node(Node.Mapping of, String key) {
        return Objects.requireNonNull(of.entries().get(key), () -> of.place() + " has no " + key);
    }
}
