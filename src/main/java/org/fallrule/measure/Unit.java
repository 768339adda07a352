package org.fallrule.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The units that the trade writes. Factors are exact: the international foot is 0.3048 m and the US survey foot
 * 1200/3937 m (NIST SP 811, 2008 edition, appendix B.6).
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
    ACRE(Dimension.AREA, 4046.8564224, 3, "acre", "acres", "ac"),

    DEGREE(Dimension.ANGLE, Math.PI / 180, 1, "deg", "degree", "degrees");

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
