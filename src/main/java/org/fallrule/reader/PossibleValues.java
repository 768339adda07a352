package org.fallrule.reader;

import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/**
 * Tells the quantities that an attribute may have from what tables hold where nothing is known, and from numbers that are read
 * in the wrong unit. Such a value is told, and not used.
 */
final class PossibleValues {
    /** What is greater than zero wherever it is known. */
    private static final Set<Attribute<?>> SIZES = Set.of(
            Attribute.LAYING_LENGTH,
            Attribute.DIAMETER,
            Attribute.OUTSIDE_DIAMETER,
            Attribute.TRUNK_DIAMETER,
            Attribute.CANOPY_RADIUS,
            Attribute.ROOT_RADIUS,
            Attribute.GRATE_OPENING,
            Attribute.GRATE_LENGTH,
            Attribute.GRATE_WIDTH,
            Attribute.WIDTH,
            Attribute.GRATE_OPEN_AREA,
            Attribute.BOX_LENGTH,
            Attribute.BOX_WIDTH,
            Attribute.WEIGHT,
            Attribute.ROUGHNESS);

    /** What may be zero where it is known, but no less. */
    private static final Set<Attribute<?>> NONE_BELOW_ZERO = Set.of(
            Attribute.DEPTH,
            Attribute.DEPTH_UP,
            Attribute.DEPTH_DOWN,
            Attribute.FOOTING_DEPTH,
            Attribute.SUMP,
            Attribute.WEEP_HOLE_AREA,
            Attribute.APRON_LENGTH,
            Attribute.STONE_SIZE,
            Attribute.RUNOFF_COEFFICIENT,
            Attribute.CONCENTRATION_TIME,
            Attribute.INFILTRATION,
            Attribute.GROUNDWATER_DEPTH,
            Attribute.HORIZONTAL_ACCURACY,
            Attribute.VERTICAL_ACCURACY);

    private final Role role;
    private final ToldOnce problems;

    PossibleValues(Role role, ToldOnce problems) {
        this.role = role;
        this.problems = problems;
    }

    /**
     * Whether a value may be one of the attribute's.
     *
     * @param text as it stands in the column
     */
    boolean holds(Attribute<?> attribute, Written value, String text, Place place) {
        double si = value.quantity().si();
        boolean possible = SIZES.contains(attribute) ? si > 0 : si >= 0 || !NONE_BELOW_ZERO.contains(attribute);
        if (!possible) {
            tell(attribute, text, place);
        }
        return possible && isLikely(attribute, value, place);
    }

    /** Whether a number, in SI, is one that anything on a lot has; some programs write the greatest there is for none. */
    boolean isOfALot(Attribute<?> attribute, double si, String text, Place place) {
        boolean possible = Math.abs(si) <= Written.GREATEST;
        if (!possible) {
            tell(attribute, text, place);
        }
        return possible;
    }

    private void tell(Attribute<?> attribute, String text, Place place) {
        problems.tell(
                attribute.name() + text,
                place,
                "\"" + text + "\" is no " + attribute.spoken() + " and is not used, here or elsewhere in the column;"
                        + " leave it empty where it is not known");
    }

    /** A number read in the wrong unit makes a pipe wide enough to fail or pass everything; it is asked about. */
    private boolean isLikely(Attribute<?> attribute, Written value, Place place) {
        Optional<String> question = attribute == Attribute.DIAMETER && role == Role.PIPE
                ? PlausibleDiameter.question(value)
                : Optional.empty();
        question.ifPresent(
                asked -> problems.tell(
                        attribute.name() + value.text(),
                        place,
                        asked
                                + " It is not used, here or elsewhere in the column; say units: {diameter: …}, or mend the number"));
        return question.isEmpty();
    }
}
