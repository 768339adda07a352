package org.fallrule.report.text;

import java.util.Locale;
import org.fallrule.finding.Outcome;

/** Text in lines of at most 80 columns. */
public final class TextPage {
    public static final int WIDTH = 80;

    private final Ink ink;
    private final StringBuilder text = new StringBuilder();

    /** A plain page. */
    public TextPage() {
        this(Ink.PLAIN);
    }

    TextPage(Ink ink) {
        this.ink = ink;
    }

    /** A heading in capitals after an empty line. */
    public void heading(String title) {
        line("");
        line(title.toUpperCase(Locale.ROOT));
    }

    /** A heading that says how many stand below it. */
    public void heading(String title, int count) {
        heading(counted(title, count));
    }

    /** A heading in the colour of an outcome, that says how many stand below it. */
    void heading(Outcome outcome, String title, int count) {
        heading(outcome, counted(title, count));
    }

    /** A heading in the colour of an outcome. */
    void heading(Outcome outcome, String title) {
        line("");
        line(ink.of(outcome, title.toUpperCase(Locale.ROOT)));
    }

    private static String counted(String title, int count) {
        return title + " (" + count + ")";
    }

    /** Words broken between them into lines, each indented. */
    public void paragraph(String indent, String words) {
        Wrapped.lines(words, WIDTH - indent.length()).forEach(each -> line(indent + each));
    }

    /** The same in the colour of an outcome, not indented. */
    void paragraph(Outcome outcome, String words) {
        Wrapped.lines(words, WIDTH).forEach(each -> line(ink.of(outcome, each)));
    }

    /** A line as it is; nothing is broken. */
    public void line(String words) {
        text.append(words).append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
