package org.fallrule.method;

import java.util.function.DoubleSupplier;

/**
 * A figure that somebody outside this project printed, and ours beside it.
 *
 * @param given the input, as the source states it
 * @param printed the figure as printed
 * @param within half of the last digit printed, or what the source's own rounding of its steps makes of it
 * @param unit its unit
 * @param source document and place; says so where the figure is from memory
 * @param ours the same computed here
 */
public record Published(String given, double printed, double within, String unit, String source, DoubleSupplier ours) {

    /** How the check values of a page begin. */
    static final String HEADING =
            "\n## Check values\n\n| given | published | computed | unit | source |\n| --- | --- | --- | --- | --- |\n";

    String row() {
        return "| " + given + " | " + digits(printed) + " | " + digits(rounded()) + " | " + unit + " | " + source
                + " |\n";
    }

    /** Our figure with four digits that count, for the page. */
    private double rounded() {
        return Double.parseDouble(String.format(java.util.Locale.ROOT, "%.4g", ours.getAsDouble()));
    }

    private static String digits(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
