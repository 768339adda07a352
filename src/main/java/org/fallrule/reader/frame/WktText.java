package org.fallrule.reader.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * Well-known text parted into its horizontal and its vertical system: {@code COMPD_CS["..", PROJCS[..], VERT_CS[..]]} in the
 * OGC flavour, {@code PROJCS[..],VERTCS[..]} in the Esri one. Refuses what is not a system for positions on earth.
 *
 * @param horizontal the text of the PROJCS or GEOGCS
 * @param heightUnit metres in the vertical system's unit; empty without one
 * @param heightDatum the name of the vertical system's datum; empty without one
 */
record WktText(String horizontal, OptionalDouble heightUnit, Optional<String> heightDatum) {
    private static final int LONGEST_SHOWN = 60;
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
            "UNIT\\s*[\\[(]\\s*\"[^\"]*\"\\s*,\\s*([0-9]+(?:\\.[0-9]*)?(?:[eE][-+]?[0-9]+)?)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern DATUM =
            Pattern.compile("(?:VERT_DATUM|VDATUM|DATUM)\\s*[\\[(]\\s*\"([^\"]*)\"", Pattern.CASE_INSENSITIVE);

    static WktText split(String text, Place where) {
        List<String> systems = new ArrayList<>();
        for (String element : WktElements.of(text, where)) {
            if (WktElements.keyword(element).equals("COMPD_CS")) {
                String inner =
                        element.substring(element.indexOf(element.contains("[") ? '[' : '(') + 1, element.length() - 1);
                systems.addAll(WktElements.of(inner, where));
            } else {
                systems.add(element);
            }
        }
        return of(systems, where);
    }

    private static WktText of(List<String> systems, Place where) {
        String horizontal = "";
        OptionalDouble unit = OptionalDouble.empty();
        Optional<String> datum = Optional.empty();
        for (String system : systems) {
            if (HORIZONTAL.contains(WktElements.keyword(system)) && horizontal.isEmpty()) {
                horizontal = system;
            } else if (VERTICAL.contains(WktElements.keyword(system))) {
                unit = unitOf(system, where);
                datum = DATUM.matcher(system)
                        .results()
                        .map(found -> found.group(1))
                        .findFirst();
            } else if (!WktElements.keyword(system).equals("AUTHORITY")) {
                throw refused(WktElements.keyword(system), where);
            }
        }
        if (horizontal.isEmpty()) {
            throw new UnusableInput(
                    where, "this well-known text has no PROJCS or GEOGCS, so positions cannot be placed");
        }
        return new WktText(horizontal, unit, datum);
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
                        + "; wanted the well-known text of a projected or geographic system: PROJCS or GEOGCS");
    }

    private static OptionalDouble unitOf(String vertical, Place where) {
        Matcher unit = UNIT.matcher(vertical);
        if (!unit.find()) {
            return OptionalDouble.empty();
        }
        double metres = Double.parseDouble(unit.group(1));
        if (!(metres > 0 && Double.isFinite(metres))) {
            throw new UnusableInput(
                    where, "the unit of heights is given as " + unit.group(1) + " metres; wanted a positive number");
        }
        return OptionalDouble.of(metres);
    }

    static String shortened(String text) {
        return Excerpt.of(text.replaceAll("\\s+", " "), LONGEST_SHOWN);
    }
}
