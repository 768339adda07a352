package org.fallrule.filter;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.filter.And;
import org.geotools.api.filter.BinaryComparisonOperator;
import org.geotools.api.filter.Or;
import org.geotools.api.filter.PropertyIsBetween;
import org.geotools.api.filter.PropertyIsEqualTo;
import org.geotools.api.filter.PropertyIsGreaterThan;
import org.geotools.api.filter.PropertyIsGreaterThanOrEqualTo;
import org.geotools.api.filter.PropertyIsLessThan;
import org.geotools.api.filter.PropertyIsLessThanOrEqualTo;
import org.geotools.api.filter.PropertyIsLike;
import org.geotools.api.filter.PropertyIsNotEqualTo;
import org.geotools.api.filter.PropertyIsNull;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.filter.expression.Literal;
import org.geotools.api.filter.expression.PropertyName;

/**
 * Reads conditions written in OGC ECQL: {@code =}, {@code <>}, {@code <}, {@code <=}, {@code >}, {@code >=}, {@code BETWEEN},
 * {@code IN}, {@code LIKE}, {@code IS NULL}, with {@code AND}, {@code OR}, {@code NOT}, a name on one side and a value on the
 * other. Functions, arithmetic and geometry are refused.
 */
public final class Ecql {
    private static final Pattern WILDCARD = Pattern.compile("[%_]");

    private final EcqlText text;

    private Ecql(EcqlText text) {
        this.text = text;
    }

    /**
     * Reads a condition.
     *
     * @param where the place to name when it cannot be read
     * @throws UnusableInput if it is not such a condition
     */
    public static Filter parse(String text, Place where) {
        EcqlText condition = new EcqlText(text, where);
        return new Ecql(condition).filter(condition.parsed());
    }

    private Filter filter(org.geotools.api.filter.Filter parsed) {
        if (parsed instanceof And and) {
            return new Filter.AllOf(parts(and.getChildren()));
        }
        if (parsed instanceof Or or) {
            return new Filter.AnyOf(parts(or.getChildren()));
        }
        if (parsed instanceof org.geotools.api.filter.Not not) {
            return new Filter.Not(filter(not.getFilter()));
        }
        if (parsed instanceof BinaryComparisonOperator comparison) {
            return comparison(comparison);
        }
        if (parsed instanceof PropertyIsBetween between) {
            String name = name(between.getExpression());
            return new Filter.AllOf(List.of(
                    new Filter.Compared(name, Relation.AT_LEAST, value(between.getLowerBoundary())),
                    new Filter.Compared(name, Relation.AT_MOST, value(between.getUpperBoundary()))));
        }
        if (parsed instanceof PropertyIsLike like) {
            return new Filter.Like(name(like.getExpression()), pattern(like));
        }
        if (parsed instanceof PropertyIsNull isNull) {
            return new Filter.IsMissing(name(isNull.getExpression()));
        }
        throw text.refused("uses something other than comparisons joined by AND, OR and NOT");
    }

    private List<Filter> parts(List<org.geotools.api.filter.Filter> children) {
        return children.stream().map(this::filter).toList();
    }

    private Filter comparison(BinaryComparisonOperator parsed) {
        boolean turned = parsed.getExpression1() instanceof Literal;
        String name = name(turned ? parsed.getExpression2() : parsed.getExpression1());
        Object value = value(turned ? parsed.getExpression1() : parsed.getExpression2());
        if (parsed instanceof PropertyIsNotEqualTo) {
            return new Filter.Not(new Filter.Compared(name, Relation.EQUAL, value));
        }
        return new Filter.Compared(name, relation(parsed, turned), value);
    }

    private Relation relation(BinaryComparisonOperator parsed, boolean turned) {
        if (parsed instanceof PropertyIsEqualTo) {
            return Relation.EQUAL;
        }
        if (parsed instanceof PropertyIsLessThan) {
            return turned ? Relation.MORE : Relation.LESS;
        }
        if (parsed instanceof PropertyIsLessThanOrEqualTo) {
            return turned ? Relation.AT_LEAST : Relation.AT_MOST;
        }
        if (parsed instanceof PropertyIsGreaterThan) {
            return turned ? Relation.LESS : Relation.MORE;
        }
        if (parsed instanceof PropertyIsGreaterThanOrEqualTo) {
            return turned ? Relation.AT_MOST : Relation.AT_LEAST;
        }
        throw text.refused("uses a comparison that is not known");
    }

    private String name(Expression expression) {
        if (expression instanceof PropertyName property) {
            return property.getPropertyName();
        }
        throw text.refused("wants an attribute's name on one side of each comparison");
    }

    private Object value(Expression expression) {
        if (expression instanceof Literal literal
                && (literal.getValue() instanceof String
                        || literal.getValue() instanceof Number
                        || literal.getValue() instanceof Boolean)) {
            return literal.getValue();
        }
        throw text.refused("wants a number, true, false or a text in single quotes on one side of each comparison");
    }

    private static Pattern pattern(PropertyIsLike like) {
        Matcher wildcard = WILDCARD.matcher(like.getLiteral());
        StringBuilder regex = new StringBuilder();
        int done = 0;
        while (wildcard.find()) {
            regex.append(Pattern.quote(like.getLiteral().substring(done, wildcard.start())))
                    .append(wildcard.group().equals("%") ? ".*" : ".");
            done = wildcard.end();
        }
        regex.append(Pattern.quote(like.getLiteral().substring(done)));
        int eitherCase = like.isMatchingCase() ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
        return Pattern.compile(regex.toString(), Pattern.DOTALL | eitherCase);
    }
}
