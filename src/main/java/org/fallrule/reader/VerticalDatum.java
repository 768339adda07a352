package org.fallrule.reader;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A vertical datum by its name. The names that plans, .prj files and EPSG give to one datum are one; any other two names are
 * two datums.
 *
 * @param name the name to show
 */
record VerticalDatum(String name) {
    private static final Pattern NAVD88 =
            Pattern.compile(".*(NAVD(OF)?(19)?88|NORTHAMERICANVERTICALDATUM(OF)?(19)?88).*");
    private static final Pattern NGVD29 = Pattern.compile(
            ".*(NGVD(OF)?(19)?29|NATIONALGEODETICVERTICALDATUM(OF)?(19)?29|SEALEVELDATUM(OF)?(19)?29).*");
    private static final Pattern EGM = Pattern.compile(".*EGM(19)?(96|84|2008).*");

    boolean isSameAs(VerticalDatum other) {
        return plain().equals(other.plain());
    }

    private String plain() {
        String letters = name.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
        if (NAVD88.matcher(letters).matches()) {
            return "NAVD88";
        }
        if (NGVD29.matcher(letters).matches()) {
            return "NGVD29";
        }
        return EGM.matcher(letters).replaceFirst("EGM$2");
    }
}
