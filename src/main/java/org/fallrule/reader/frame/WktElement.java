package org.fallrule.reader.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fallrule.document.Place;

/**
 * One element of well-known text: {@code UNIT["metre", 1]}.
 *
 * @param keyword in capitals
 * @param values texts without their quotes, words in capitals, and numbers as written, in order
 * @param elements the elements in it, in order
 */
record WktElement(String keyword, List<String> values, List<WktElement> elements) {

    /** Reads an element with all that it holds; nothing where the text is no such element. */
    static Optional<WktElement> read(String text, Place where) {
        String keyword = WktElements.keyword(text);
        String rest = text.substring(keyword.length()).strip();
        if (keyword.isEmpty() || rest.length() < 2 || !isBracketed(rest)) {
            return Optional.empty();
        }
        List<String> values = new ArrayList<>();
        List<WktElement> elements = new ArrayList<>();
        for (String part : WktElements.parted(rest.substring(1, rest.length() - 1), where)) {
            Optional<WktElement> element = read(part, where);
            if (element.isPresent()) {
                elements.add(element.get());
            } else if (elements.isEmpty() && isValue(part)) {
                values.add(part.startsWith("\"") ? part.substring(1, part.length() - 1) : part);
            } else {
                return Optional.empty();
            }
        }
        return Optional.of(new WktElement(keyword, values, elements));
    }

    private static boolean isBracketed(String text) {
        char last = text.charAt(text.length() - 1);
        return (text.charAt(0) == '[' && last == ']') || (text.charAt(0) == '(' && last == ')');
    }

    private static boolean isValue(String part) {
        boolean quoted = part.length() >= 2 && part.charAt(0) == '"' && part.indexOf('"', 1) == part.length() - 1;
        boolean word = !part.isEmpty() && part.chars().allMatch(c -> c >= 'A' && c <= 'Z');
        return quoted || word || number(part).isPresent();
    }

    private static OptionalDouble number(String text) {
        if (!text.chars().allMatch(c -> "0123456789.+-eE".indexOf(c) >= 0)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** The name that it begins with; empty without one. */
    String name() {
        return values.isEmpty() ? "" : values.get(0);
    }

    /** The number at a position among its values. */
    OptionalDouble number(int position) {
        return position < values.size() ? number(values.get(position)) : OptionalDouble.empty();
    }

    /** The element of a keyword, where it holds just one. */
    Optional<WktElement> one(String wanted) {
        List<WktElement> found =
                elements.stream().filter(each -> each.keyword.equals(wanted)).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** Whether it holds no elements but such; an authority's code changes nothing. */
    boolean holdsOnly(List<String> keywords) {
        return elements.stream().allMatch(each -> each.keyword.equals("AUTHORITY") || keywords.contains(each.keyword));
    }

    /** Its name in small letters, as names of methods and parameters are compared. */
    String plainName() {
        return name().toLowerCase(Locale.ROOT);
    }
}
