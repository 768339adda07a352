package org.fallrule.document;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a misspelt one was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /** What closes a message's sentence: {@code "; did you mean at_least?"}, or a full stop when no known word is near. */
    public static String hint(String found, Collection<String> known) {
        return to(found, known).map(word -> "; did you mean " + word + "?").orElse(".");
    }

    /** The known word with the fewest letters to change, if those are at most a third of the word. */
    public static Optional<String> to(String found, Collection<String> known) {
        String lower = lowerCase(found);
        return known.stream()
                .filter(word -> Math.abs(lower.length() - word.length()) <= most(word))
                .filter(word -> letters(lower, lowerCase(word)) <= most(word))
                .min(Comparator.comparingInt((String word) -> letters(lower, lowerCase(word)))
                        .thenComparing(word -> word));
    }

    private static String lowerCase(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    private static int most(String word) {
        return Math.max(1, word.length() / 3);
    }

    /** Levenshtein distance: the letters to put in, take out or change (V. I. Levenshtein, Soviet Physics Doklady 10, 1966). */
    private static int letters(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
