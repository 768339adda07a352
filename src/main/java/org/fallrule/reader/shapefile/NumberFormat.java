package org.fallrule.reader.shapefile;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Types F and N: a decimal number as text. Stars, which writers put where a number does not fit, are no value. */
final class NumberFormat implements ValueFormat {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]++\\.?[0-9]*+|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?");
    private static final Pattern STARS = Pattern.compile("\\*+");

    @Override
    public Optional<Object> read(byte[] raw, Consumer<String> complain) {
        return number(AsciiText.of(raw), complain);
    }

    static boolean isNoValue(String text) {
        return text.isEmpty() || STARS.matcher(text).matches();
    }

    /** The number as a {@link Double}; empty, with a complaint unless it is no value, when the text is no finite number. */
    static Optional<Object> number(String text, Consumer<String> complain) {
        if (isNoValue(text)) {
            return Optional.empty();
        }
        double number = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!Double.isFinite(number)) {
            complain.accept("found " + AsciiText.quoted(text)
                    + "; wanted a number such as 12.5; it was left out; type it again");
            return Optional.empty();
        }
        return Optional.of(number);
    }
}
