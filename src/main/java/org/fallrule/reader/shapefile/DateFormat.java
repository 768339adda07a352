package org.fallrule.reader.shapefile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Type D: a date as eight digits, year, month, day; blank or zeros for no value. */
final class DateFormat implements ValueFormat {
    private static final Pattern EIGHT_DIGITS = Pattern.compile("[0-9]{8}");
    private static final Pattern ZEROS = Pattern.compile("0*");

    @Override
    public Optional<Object> read(byte[] raw, Consumer<String> complain) {
        String text = AsciiText.of(raw);
        if (ZEROS.matcher(text).matches()) {
            return Optional.empty();
        }
        Optional<Object> date = EIGHT_DIGITS.matcher(text).matches() ? date(Integer.parseInt(text)) : Optional.empty();
        if (date.isEmpty()) {
            complain.accept(
                    "found " + AsciiText.quoted(text)
                            + "; wanted a day of the calendar as eight digits, such as 20260131; it was left out; type it again");
        }
        return date;
    }

    private static Optional<Object> date(int digits) {
        try {
            return Optional.of(LocalDate.of(digits / 10000, digits / 100 % 100, digits % 100));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
