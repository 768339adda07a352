package org.fallrule.report.map;

import java.util.regex.Pattern;

/**
 * Text from a plan, made safe to stand among a report's own words. Characters that a page or an XML file cannot hold, and
 * those that would turn the reading direction of what follows, are shown by their number; a run of right-to-left letters is
 * set apart so that it does not move the figures beside it.
 */
public final class PlainText {
    private static final Pattern UNSHOWABLE =
            Pattern.compile("[\\p{Cc}\\p{Cs}\\x{202A}-\\x{202E}\\x{2066}-\\x{2069}\\x{200E}\\x{200F}\\x{061C}"
                    + "\\x{2028}\\x{2029}\\x{FFFE}\\x{FFFF}]");
    private static final String RIGHT_TO_LEFT = "[\\x{0590}-\\x{08FF}\\x{FB1D}-\\x{FDFF}\\x{FE70}-\\x{FEFE}]";
    private static final Pattern RIGHT_TO_LEFT_RUN =
            Pattern.compile(RIGHT_TO_LEFT + "(?:[\\s\\p{M}]*+" + RIGHT_TO_LEFT + ")*+");

    private static final Pattern SET_APART = Pattern.compile("\\x{2068}(" + RIGHT_TO_LEFT_RUN.pattern() + ")\\x{2069}");

    private PlainText() {}

    /** The whole text. What has been made safe once stays the same when it is made safe again. */
    public static String of(String text) {
        return isPlain(text) ? text : made(text);
    }

    /** Whether every character is a printable one of ASCII, as in most texts: then there is nothing to do. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    private static String made(String text) {
        String shown = UNSHOWABLE
                .matcher(SET_APART.matcher(text).replaceAll("$1"))
                .replaceAll(found -> found.group().isBlank() && found.group().charAt(0) < ' '
                        ? " "
                        : String.format("[U+%04X]", found.group().codePointAt(0)));
        return RIGHT_TO_LEFT_RUN.matcher(shown).replaceAll("\u2068$0\u2069");
    }

    /** The text, or its beginning and an ellipsis when it has more than so many characters. */
    public static String clipped(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return of(text);
        }
        return of(text.substring(0, text.offsetByCodePoints(0, most - 1)).strip()) + "…";
    }
}
