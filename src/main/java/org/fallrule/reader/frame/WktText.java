package org.fallrule.reader.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * Well-known text parted into its horizontal and its vertical system: {@code COMPD_CS["..", PROJCS[..], VERT_CS[..]]} in the
 * OGC flavour, {@code PROJCS[..],VERTCS[..]} in the Esri one. Refuses what is not a system for positions on earth.
 *
 * @param horizontal the text of the PROJCS or GEOGCS
 * @param heightUnit metres in the vertical system's unit; empty without one
 */
record WktText(String horizontal, OptionalDouble heightUnit) {
    private static final int MAX_LENGTH = 20_000;
    private static final int MAX_DEPTH = 12;
    private static final Set<String> HORIZONTAL = Set.of("PROJCS", "GEOGCS");
    private static final Set<String> VERTICAL = Set.of("VERT_CS", "VERTCS");
    private static final Set<String> SECOND_EDITION = Set.of(
            "PROJCRS",
            "PROJECTEDCRS",
            "GEOGCRS",
            "GEOGRAPHICCRS",
            "GEODCRS",
            "GEODETICCRS",
            "BOUNDCRS",
            "COMPOUNDCRS",
            "VERTCRS",
            "ENGCRS",
            "ENGINEERINGCRS",
            "DERIVEDPROJCRS");
    private static final Pattern UNIT = Pattern.compile(
            "UNIT\\s*[\\[(]\\s*\"[^\"]*\"\\s*,\\s*([0-9.]+(?:[eE][-+]?[0-9]+)?)", Pattern.CASE_INSENSITIVE);

    static WktText split(String text, Place where) {
        List<String> systems = new ArrayList<>();
        for (String element : elements(text, where)) {
            if (keyword(element).equals("COMPD_CS")) {
                String inner =
                        element.substring(element.indexOf(element.contains("[") ? '[' : '(') + 1, element.length() - 1);
                systems.addAll(elements(inner, where));
            } else {
                systems.add(element);
            }
        }
        return of(systems, where);
    }

    private static WktText of(List<String> systems, Place where) {
        String horizontal = "";
        OptionalDouble unit = OptionalDouble.empty();
        for (String system : systems) {
            if (HORIZONTAL.contains(keyword(system)) && horizontal.isEmpty()) {
                horizontal = system;
            } else if (VERTICAL.contains(keyword(system))) {
                unit = unitOf(system);
            } else if (!keyword(system).equals("AUTHORITY")) {
                throw refused(keyword(system), where);
            }
        }
        if (horizontal.isEmpty()) {
            throw new UnusableInput(
                    where, "this well-known text has no PROJCS or GEOGCS, so positions cannot be placed");
        }
        return new WktText(horizontal, unit);
    }

    private static UnusableInput refused(String keyword, Place where) {
        if (SECOND_EDITION.contains(keyword)) {
            return new UnusableInput(
                    where,
                    "this is well-known text of the second edition (" + keyword
                            + "), which is not read; wanted PROJCS or GEOGCS (WKT1), or a code such as EPSG:2264");
        }
        if (keyword.equals("LOCAL_CS")) {
            return new UnusableInput(
                    where,
                    "this is a local system (LOCAL_CS) that is tied to no place on earth; wanted the layer in a"
                            + " projected or geographic system, such as EPSG:2264");
        }
        return new UnusableInput(
                where,
                "found " + shortened(keyword)
                        + "; wanted the well-known text of a projected or geographic system: PROJCS or" + " GEOGCS");
    }

    private static OptionalDouble unitOf(String vertical) {
        Matcher unit = UNIT.matcher(vertical);
        return unit.find() ? OptionalDouble.of(Double.parseDouble(unit.group(1))) : OptionalDouble.empty();
    }

    private static String keyword(String element) {
        int end = 0;
        while (end < element.length()
                && (Character.isLetterOrDigit(element.charAt(end)) || element.charAt(end) == '_')) {
            end++;
        }
        return element.substring(0, end).toUpperCase(Locale.ROOT);
    }

    /** The bracketed elements that stand side by side in a text; a quoted text among them is passed over. */
    private static List<String> elements(String text, Place where) {
        if (text.length() > MAX_LENGTH) {
            throw new UnusableInput(
                    where,
                    "this well-known text has " + text.length() + " characters; at most " + MAX_LENGTH + " are read");
        }
        List<String> elements = new ArrayList<>();
        int depth = 0;
        int start = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (!quoted && (c == '[' || c == '(')) {
                depth++;
            } else if (!quoted && (c == ']' || c == ')')) {
                depth--;
                if (depth == 0) {
                    elements.add(text.substring(start, i + 1).strip());
                }
            } else if (!quoted && c == ',' && depth == 0) {
                start = i + 1;
            }
            if (depth < 0 || depth > MAX_DEPTH) {
                throw unbalanced(where);
            }
        }
        if (depth != 0 || quoted) {
            throw unbalanced(where);
        }
        return elements;
    }

    private static UnusableInput unbalanced(Place where) {
        return new UnusableInput(
                where, "the brackets or quotes of this well-known text do not match; was the .prj file cut off?");
    }

    static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= 60 ? line : line.substring(0, 60) + "...";
    }
}
