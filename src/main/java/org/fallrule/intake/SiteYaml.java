package org.fallrule.intake;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.OpenQuestions;

/** Pieces of the text of site.yaml. */
final class SiteYaml {
    private static final Set<String> NOT_TEXT = Set.of("true", "false", "yes", "no", "on", "off", "null", "y", "n");

    private SiteYaml() {}

    /** A text as YAML wants it: bare where it cannot be taken for anything else, else in quotes. */
    static String text(String text) {
        boolean isBare = text.matches("[\\p{L}_][\\p{L}\\p{N}_./-]*( [\\p{L}\\p{N}_./-]+)*")
                && !NOT_TEXT.contains(text.toLowerCase(java.util.Locale.ROOT));
        if (isBare) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> quoted.append(escaped(letter)));
        return quoted.append('"').toString();
    }

    private static String escaped(int letter) {
        if (letter == '"' || letter == '\\') {
            return "\\" + (char) letter;
        }
        boolean isPlain = letter >= ' '
                && letter != 0x7F
                && letter != 0x85
                && letter < 0xD800
                && letter != 0x2028
                && letter != 0x2029;
        return isPlain || letter > 0xFFFF ? Character.toString(letter) : String.format("\\u%04X", letter);
    }

    /** A table as the value of a role. */
    static String source(LooseLayers.Table table) {
        return table.table()
                .map(name -> "{file: " + text(table.file()) + ", table: " + text(name) + "}")
                .orElseGet(() -> text(table.file()));
    }

    /** A comment in one line. */
    static String remark(String words) {
        return words.isEmpty() ? "" : "  # " + oneLine(words);
    }

    /** A question in one line. */
    static String question(String words) {
        return OpenQuestions.MARK + " " + oneLine(words);
    }

    static String oneLine(String words) {
        return words.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]+", " ");
    }

    /** A line, its remark or its question behind it. */
    static void line(StringBuilder text, int indent, Statement line) {
        text.append(" ".repeat(indent)).append(text(line.key())).append(':');
        if (!line.value().isEmpty()) {
            text.append(' ').append(text(line.value()));
        }
        if (line.isOpen()) {
            text.append("  ").append(question(line.remark()));
        } else {
            text.append(remark(line.remark()));
        }
        text.append('\n');
    }

    /** Lines under a key; nothing when there are none. */
    static void lines(StringBuilder text, int indent, String key, List<Statement> lines) {
        if (!lines.isEmpty()) {
            text.append(" ".repeat(indent)).append(key).append(":\n");
            lines.forEach(line -> line(text, indent + 2, line));
        }
    }

    /** Lines under keys under a key. */
    static void lines(StringBuilder text, int indent, String key, Map<String, List<Statement>> lines) {
        if (!lines.isEmpty()) {
            text.append(" ".repeat(indent)).append(key).append(":\n");
            lines.forEach((inner, each) -> lines(text, indent + 2, inner, each));
        }
    }
}
