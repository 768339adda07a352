package org.fallrule.reader.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** The bracketed elements that stand side by side in a well-known text; brackets and commas within quotes do not count. */
final class WktElements {
    private static final int MAX_LENGTH = 20_000;
    private static final int MAX_DEPTH = 12;

    private final String text;
    private final Place where;
    private final List<String> elements = new ArrayList<>();
    private int depth;
    private int start;
    private boolean quoted;

    private WktElements(String text, Place where) {
        this.text = text;
        this.where = where;
    }

    /** The outermost elements of a text, each with all that it holds. */
    static List<String> of(String text, Place where) {
        if (text.length() > MAX_LENGTH) {
            throw new UnusableInput(
                    where,
                    "this well-known text has " + text.length() + " characters; at most " + MAX_LENGTH + " are read");
        }
        WktElements scan = new WktElements(text, where);
        for (int i = 0; i < text.length(); i++) {
            scan.pass(i);
        }
        if (scan.depth != 0 || scan.quoted) {
            throw scan.unbalanced();
        }
        return scan.elements;
    }

    private void pass(int i) {
        char c = text.charAt(i);
        if (c == '"') {
            quoted = !quoted;
        } else if (!quoted) {
            passUnquoted(c, i);
        }
    }

    private void passUnquoted(char c, int i) {
        switch (c) {
            case '[', '(' -> depth++;
            case ']', ')' -> {
                depth--;
                if (depth == 0) {
                    elements.add(text.substring(start, i + 1).strip());
                }
            }
            case ',' -> start = depth == 0 ? i + 1 : start;
            default -> {}
        }
        if (depth < 0 || depth > MAX_DEPTH) {
            throw unbalanced();
        }
    }

    private UnusableInput unbalanced() {
        return new UnusableInput(
                where, "the brackets or quotes of this well-known text do not match; was the .prj file cut off?");
    }

    /** What stands between the outermost commas of a text, elements and values. */
    static List<String> parted(String text, Place where) {
        WktElements scan = new WktElements(text, where);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            scan.pass(i);
            if (text.charAt(i) == ',' && scan.depth == 0 && !scan.quoted) {
                parts.add(text.substring(from, i).strip());
                from = i + 1;
            }
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    /** The word that an element begins with, in capitals. */
    static String keyword(String element) {
        int end = 0;
        while (end < element.length()
                && (Character.isLetterOrDigit(element.charAt(end)) || element.charAt(end) == '_')) {
            end++;
        }
        return element.substring(0, end).toUpperCase(Locale.ROOT);
    }
}
