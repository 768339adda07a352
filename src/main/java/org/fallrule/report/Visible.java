package org.fallrule.report;

/**
 * Text as it may be shown on a terminal or in a table. Control characters, which could steer a terminal (ECMA-48), and those
 * that change the direction of what follows (UAX #9), become spaces; plans come from anybody.
 */
public final class Visible {
    private Visible() {}

    public static String of(String words) {
        return words.codePoints()
                .map(letter -> isShown(letter) ? letter : ' ')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isShown(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> false;
            default -> true;
        };
    }
}
