package org.fallrule.reader;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;

/**
 * Tells the diameters that a drain of a lot may have from those whose unit is mixed up. The bounds are no rule's: they only
 * part what such drains are made of, from downspout leaders to wide culverts, from a number of inches read as feet, of
 * millimetres read as inches, and the like.
 */
final class PlausibleDiameter {
    private static final Length SMALLEST = new Length(0.05);

    /** Below 4 ft, so that a common 4 in pipe read in feet is asked about. */
    private static final Length GREATEST = new Length(1.2);

    private PlausibleDiameter() {}

    /** What to ask about a nominal diameter as it was written: {@code 4 ft: is the diameter in inches?}; nothing when it may be so. */
    static Optional<String> question(Written diameter) {
        if (isPlausible(diameter.quantity().si())) {
            return Optional.empty();
        }
        double number = diameter.quantity().in(diameter.unit());
        String units = Stream.of(Unit.INCH, Unit.MILLIMETRE, Unit.FOOT, Unit.METRE)
                .filter(unit -> unit != diameter.unit() && isPlausible(number * unit.toSi()))
                .filter(unit -> unit != Unit.FOOT || number < 1)
                .map(PlausibleDiameter::spoken)
                .collect(Collectors.joining(" or "));
        return Optional.of(diameter.text() + ": "
                + (units.isEmpty() ? "what is the diameter, and in which unit?" : "is the diameter in " + units + "?"));
    }

    private static boolean isPlausible(double metres) {
        return metres >= SMALLEST.metres() && metres <= GREATEST.metres();
    }

    private static String spoken(Unit unit) {
        return switch (unit) {
            case INCH -> "inches";
            case MILLIMETRE -> "millimetres";
            case FOOT -> "feet";
            default -> "metres";
        };
    }
}
