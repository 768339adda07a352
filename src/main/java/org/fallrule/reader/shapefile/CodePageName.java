package org.fallrule.reader.shapefile;

import java.nio.charset.Charset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The names that a {@code .cpg} gives encodings: {@code UTF-8}, {@code 65001}, {@code 1252}, {@code ANSI 1252}, {@code 88591}. */
final class CodePageName {
    private static final Pattern ISO = Pattern.compile("(?:ISO[-_ ]?)?8859[-_ ]?([0-9]{1,2})");
    private static final Pattern NUMBER = Pattern.compile("(?:ANSI|OEM|CP|WINDOWS|IBM|LDID)?[-_ /]?([0-9]{3,5})");
    private static final Pattern WIDE = Pattern.compile("(?:X-)?UTF-?(?:16|32).*");

    private CodePageName() {}

    /** The encoding of that name; empty when the name is not known, or means units of more than a byte, which no table has. */
    static Optional<Charset> charset(String name) {
        String upper = name.toUpperCase(Locale.ROOT);
        if (WIDE.matcher(upper).matches()) {
            return Optional.empty();
        }
        return candidates(upper)
                .flatMap(candidate -> supported(candidate).stream())
                .findFirst();
    }

    private static Stream<String> candidates(String name) {
        Matcher iso = ISO.matcher(name);
        if (iso.matches()) {
            return Stream.of("ISO-8859-" + iso.group(1));
        }
        Matcher number = NUMBER.matcher(name);
        if (!number.matches()) {
            return Stream.of(name);
        }
        String digits = number.group(1);
        return digits.equals("65001")
                ? Stream.of("UTF-8")
                : Stream.of(
                        "windows-" + digits, "IBM" + digits, "x-IBM" + digits, "x-windows-" + digits, "MS" + digits);
    }

    private static Optional<Charset> supported(String name) {
        try {
            return Charset.isSupported(name) ? Optional.of(Charset.forName(name)) : Optional.empty();
        } catch (IllegalArgumentException noName) {
            return Optional.empty();
        }
    }
}
