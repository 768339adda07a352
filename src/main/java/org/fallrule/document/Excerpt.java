package org.fallrule.document;

/** The beginning of a text, for messages: nobody reads a message that repeats a page. */
public final class Excerpt {
    private static final int LONGEST = 120;

    private Excerpt() {}

    /** The text, or so much of its beginning as a message can hold. */
    public static String of(String text) {
        return of(text, LONGEST);
    }

    /** The text, or so many letters of its beginning. */
    public static String of(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        boolean splitsPair = Character.isHighSurrogate(text.charAt(longest - 1));
        return text.substring(0, splitsPair ? longest - 1 : longest) + "…";
    }
}
