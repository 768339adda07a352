package org.fallrule.locality;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How rare a storm is: the mean number of years between storms that rain as hard or harder.
 *
 * @param years the years, one or more
 */
public record ReturnPeriod(int years) implements Comparable<ReturnPeriod> {
    private static final Pattern WRITTEN = Pattern.compile("([1-9]\\d{0,3})\\s*(?:yr|year|years)");

    public ReturnPeriod {
        if (years < 1) {
            throw new IllegalArgumentException("a return period is one year or more, found " + years);
        }
    }

    /** Reads {@code 10 yr}; empty when the text is not a whole number of years with the word. */
    public static Optional<ReturnPeriod> parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        return matcher.matches() ? Optional.of(new ReturnPeriod(Integer.parseInt(matcher.group(1)))) : Optional.empty();
    }

    @Override
    public int compareTo(ReturnPeriod other) {
        return Integer.compare(years, other.years);
    }

    @Override
    public String toString() {
        return years + " yr";
    }
}
