package org.fallrule.document;

/** The beginning of a text, for messages: nobody reads a message that repeats a page. */
public final class Excerpt {
    private static final int LONGEST = 120;

    private Excerpt() {}

    /** The text, or so much of its beginning as a message can hold. */
    public static String of(String text) {
        if (text.length() <= LONGEST) {
            return text;
        }
        boolean splitsPair = Character.isHighSurrogate(text.charAt(LONGEST - 1));
        return text.substring(0, splitsPair ? LONGEST - 1 : LONGEST) + "…";
    }
}
