package org.fallrule.filter;

import java.util.regex.Pattern;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.filter.FilterFactory;
import org.geotools.filter.FilterFactoryImpl;
import org.geotools.filter.text.cql2.CQLException;
import org.geotools.filter.text.ecql.ECQL;

/**
 * The text of a condition, and how it is refused. Length and depth are bounded, as the parser calls itself for each part and
 * would overflow the stack.
 *
 * @param text what is written
 * @param where where it stands
 */
record EcqlText(String text, Place where) {
    private static final int LONGEST = 4000;
    private static final int MOST_PARENTHESES = 100;
    /** Made here, as the library would look through every library for another one. */
    private static final FilterFactory PARTS = new FilterFactoryImpl();

    private static final Pattern QUOTED = Pattern.compile("'[^']*'|\"[^\"]*\"");
    private static final Pattern ID = Pattern.compile("\\bid\\b", Pattern.CASE_INSENSITIVE);

    org.geotools.api.filter.Filter parsed() {
        String bare = QUOTED.matcher(text).replaceAll("''");
        if (text.length() > LONGEST
                || bare.chars().filter(letter -> letter == '(').count() > MOST_PARENTHESES) {
            throw refused("is too long or too deep; part it into several rules or cases");
        }
        if (text.contains("\\u")) {
            throw refused("holds \\u, which begins the code of a letter; write the letter itself");
        }
        if (bare.contains("==")) {
            throw refused("says == where = is meant");
        }
        try {
            return ECQL.toFilter(text, PARTS);
        } catch (CQLException | RuntimeException e) {
            throw refused(
                    ID.matcher(bare).find()
                            ? "cannot be read; id is a word of ECQL, as a name it stands in double quotes"
                            : "cannot be read");
        }
    }

    UnusableInput refused(String why) {
        String what = text.isBlank() ? "an empty condition " : "the condition " + Excerpt.of(text) + " ";
        return new UnusableInput(where, what + why + "; write it like diameter_in <= 6 AND material = 'pvc_sdr35'");
    }
}
