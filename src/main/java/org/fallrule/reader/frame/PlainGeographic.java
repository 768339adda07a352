package org.fallrule.reader.frame;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A geographic system in degrees from Greenwich, on one of the datums that are taken as one.
 *
 * @param spheroid its ellipsoid
 */
record PlainGeographic(Spheroid spheroid) {

    static Optional<PlainGeographic> of(WktElement geographic) {
        boolean degrees = is(geographic.one("UNIT"), 1, Math.PI / 180, 1e-14);
        boolean greenwich = is(geographic.one("PRIMEM"), 1, 0, 0);
        boolean plain = geographic.values().size() == 1
                && geographic.holdsOnly(List.of("DATUM", "PRIMEM", "UNIT", "AXIS"))
                && runEastAndNorth(geographic);
        Optional<WktElement> datum = geographic
                .one("DATUM")
                .filter(each -> Datums.isOfFamily(each.name()) && each.holdsOnly(List.of("SPHEROID")));
        return degrees && greenwich && plain
                ? datum.flatMap(each -> each.one("SPHEROID"))
                        .filter(each -> is(Optional.of(each), 1, Spheroid.A, 0))
                        .flatMap(PlainGeographic::spheroid)
                        .map(PlainGeographic::new)
                : Optional.empty();
    }

    private static Optional<Spheroid> spheroid(WktElement spheroid) {
        OptionalDouble inverse = spheroid.number(2);
        return inverse.isPresent()
                ? List.of(Spheroid.GRS_80, Spheroid.WGS_84).stream()
                        .filter(each -> each.f() == 1 / inverse.getAsDouble())
                        .findFirst()
                : Optional.empty();
    }

    private static boolean is(Optional<WktElement> element, int position, double wanted, double off) {
        return element.isPresent()
                && element.get().elements().stream()
                        .allMatch(each -> each.keyword().equals("AUTHORITY"))
                && element.get().number(position).isPresent()
                && Math.abs(element.get().number(position).getAsDouble() - wanted) <= off;
    }

    /** Whether an element names no axes, or just an east and a north one, in any order: files have east first all the same. */
    static boolean runEastAndNorth(WktElement system) {
        List<String> ways = system.elements().stream()
                .filter(each -> each.keyword().equals("AXIS"))
                .map(each -> each.values().size() == 2 ? each.values().get(1).toUpperCase(Locale.ROOT) : "")
                .sorted()
                .toList();
        return ways.isEmpty() || ways.equals(List.of("EAST", "NORTH"));
    }
}
