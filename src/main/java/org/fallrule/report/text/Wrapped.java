package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines between its words. */
public final class Wrapped {
    private Wrapped() {}

    /** Lines of at most so many characters; a longer word is cut. Control characters but the colour sign become spaces. */
    public static List<String> lines(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : visible(words).strip().split("\\s+", -1)) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + seen(rest) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (seen(rest) > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String visible(String words) {
        return words.replaceAll("[\\p{Cntrl}&&[^\u001b]]", " ");
    }

    private static int seen(String word) {
        return word.replaceAll("\u001b\\[[0-9;]*m", "").length();
    }
}
