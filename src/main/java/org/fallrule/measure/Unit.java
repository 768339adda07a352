package org.fallrule.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The units that the trade writes. Factors are exact: the international foot is 0.3048 m, the US survey foot 1200/3937 m,
 * the US gallon 231 cubic inches and the pound 0.45359237 kg (NIST SP 811, 2008 edition, appendix B.6).
 */
public enum Unit {
    METRE(Dimension.LENGTH, 1, 3, "m", "metre", "metres", "meter", "meters"),
    CENTIMETRE(Dimension.LENGTH, 0.01, 1, "cm"),
    MILLIMETRE(Dimension.LENGTH, 0.001, 0, "mm"),
    FOOT(Dimension.LENGTH, 0.3048, 2, "ft", "foot", "feet", "'"),
    SURVEY_FOOT(Dimension.LENGTH, 1200.0 / 3937.0, 2, "ft_us", "us_ft", "ftus", "us-ft"),
    INCH(Dimension.LENGTH, 0.0254, 1, "in", "inch", "inches", "\""),

    ELEVATION_METRE(Dimension.ELEVATION, 1, 3, "m", "metre", "metres", "meter", "meters"),
    ELEVATION_FOOT(Dimension.ELEVATION, 0.3048, 2, "ft", "foot", "feet"),
    ELEVATION_SURVEY_FOOT(Dimension.ELEVATION, 1200.0 / 3937.0, 2, "ft_us", "us_ft", "ftus", "us-ft"),

    PERCENT(Dimension.SLOPE, 0.01, 2, "%", "percent", "pct"),
    INCH_PER_FOOT(Dimension.SLOPE, 1.0 / 12.0, 3, "in/ft"),
    FOOT_PER_FOOT(Dimension.SLOPE, 1, 4, "ft/ft", "m/m"),
    MILLIMETRE_PER_METRE(Dimension.SLOPE, 0.001, 1, "mm/m"),

    SQUARE_METRE(Dimension.AREA, 1, 1, "m2", "sq_m"),
    SQUARE_FOOT(Dimension.AREA, 0.3048 * 0.3048, 0, "sq ft", "sq_ft", "ft2", "sf"),
    SQUARE_INCH(Dimension.AREA, 0.0254 * 0.0254, 1, "sq in", "sq_in", "in2"),
    ACRE(Dimension.AREA, 4046.8564224, 3, "acre", "acres", "ac"),

    DEGREE(Dimension.ANGLE, Math.PI / 180, 1, "deg", "degree", "degrees"),

    CUBIC_FOOT_PER_SECOND(Dimension.FLOW, Factor.CUBIC_FOOT, 3, "cfs", "ft3/s", "cu ft/s"),
    GALLON_PER_MINUTE(Dimension.FLOW, Factor.GALLON / 60, 1, "gpm", "gal/min"),
    LITRE_PER_SECOND(Dimension.FLOW, 1e-3, 2, "l/s", "L/s", "lps"),
    CUBIC_METRE_PER_SECOND(Dimension.FLOW, 1, 4, "m3/s", "cms"),

    FOOT_PER_SECOND(Dimension.VELOCITY, 0.3048, 2, "ft/s", "fps"),
    METRE_PER_SECOND(Dimension.VELOCITY, 1, 2, "m/s"),

    INCH_PER_HOUR(Dimension.INTENSITY, 0.0254 / 3600, 2, "in/h", "in/hr", "iph"),
    MILLIMETRE_PER_HOUR(Dimension.INTENSITY, 1e-3 / 3600, 1, "mm/h", "mm/hr"),

    MINUTE(Dimension.TIME, 60, 1, "min", "minute", "minutes"),
    SECOND(Dimension.TIME, 1, 0, "s", "sec", "second", "seconds"),
    HOUR(Dimension.TIME, 3600, 1, "h", "hr", "hour", "hours"),

    CUBIC_FOOT(Dimension.VOLUME, Factor.CUBIC_FOOT, 1, "cu ft", "ft3", "cf"),
    GALLON(Dimension.VOLUME, Factor.GALLON, 0, "gal", "gallon", "gallons"),
    CUBIC_YARD(Dimension.VOLUME, 27 * Factor.CUBIC_FOOT, 1, "cu yd", "yd3", "cy"),
    CUBIC_METRE(Dimension.VOLUME, 1, 3, "m3"),
    LITRE(Dimension.VOLUME, 1e-3, 0, "l", "litre", "litres", "liter", "liters"),

    POUND(Dimension.MASS, 0.45359237, 1, "lb", "lbs", "pound", "pounds"),
    KILOGRAM(Dimension.MASS, 1, 1, "kg"),

    ONE(Dimension.RATIO, 1, 2, "");

    private static final class Factor {
        static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
        static final double GALLON = 231 * 0.0254 * 0.0254 * 0.0254;
    }

    private final Dimension dimension;
    private final double toSi;
    private final int decimals;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> words;

    Unit(Dimension dimension, double toSi, int decimals, String... words) {
        this.dimension = dimension;
        this.toSi = toSi;
        this.decimals = decimals;
        this.words = List.of(words);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The number of SI units in one of these. */
    public double toSi() {
        return toSi;
    }

    /** The unit in which a quantity is printed that comes with no unit of its own. */
    public static Unit usual(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> FOOT;
            case ELEVATION -> ELEVATION_FOOT;
            case SLOPE -> PERCENT;
            case AREA -> SQUARE_FOOT;
            case ANGLE -> DEGREE;
            case FLOW -> CUBIC_FOOT_PER_SECOND;
            case VELOCITY -> FOOT_PER_SECOND;
            case INTENSITY -> INCH_PER_HOUR;
            case TIME -> MINUTE;
            case VOLUME -> CUBIC_FOOT;
            case MASS -> POUND;
            case RATIO -> ONE;
        };
    }

    /** The metric unit that stands for this one on a plan in metres. */
    public Unit metric() {
        return switch (this) {
            case FOOT, SURVEY_FOOT -> METRE;
            case INCH -> MILLIMETRE;
            case ELEVATION_FOOT, ELEVATION_SURVEY_FOOT -> ELEVATION_METRE;
            case SQUARE_FOOT, SQUARE_INCH, ACRE -> SQUARE_METRE;
            case CUBIC_FOOT_PER_SECOND, GALLON_PER_MINUTE -> LITRE_PER_SECOND;
            case FOOT_PER_SECOND -> METRE_PER_SECOND;
            case INCH_PER_HOUR -> MILLIMETRE_PER_HOUR;
            case CUBIC_FOOT, CUBIC_YARD, GALLON -> CUBIC_METRE;
            case POUND -> KILOGRAM;
            default -> this;
        };
    }

    /** Digits after the point that the trade usually prints in this unit. */
    public int decimals() {
        return decimals;
    }

    /** Digits after the point in which a difference of {@link Dimension#tolerance()} shows. */
    int decimalsOfTolerance() {
        return Math.max(decimals, (int) Math.ceil(Math.log10(toSi / dimension.tolerance())));
    }

    /** The unit's usual sign: {@code ft}, {@code in/ft}. */
    public String symbol() {
        return words.get(0);
    }

    /** Every word that it goes by, its usual sign first, as people write it: litres with a capital L too. */
    public List<String> words() {
        return words;
    }

    /** The unit of that dimension that goes by a word, upper or lower case. */
    public static Optional<Unit> named(String word, Dimension dimension) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension && unit.words.contains(wanted))
                .findFirst();
    }

    /** The signs of all units of a dimension, for messages: {@code m, cm, mm, ft, ft_us or in}. */
    public static String symbolsOf(Dimension dimension) {
        List<String> symbols = Arrays.stream(values())
                .filter(unit -> unit.dimension == dimension)
                .map(Unit::symbol)
                .collect(Collectors.toList());
        String last = symbols.remove(symbols.size() - 1);
        return symbols.isEmpty() ? last : String.join(", ", symbols) + " or " + last;
    }
}
