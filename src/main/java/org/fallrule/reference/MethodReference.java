package org.fallrule.reference;

import java.util.List;
import org.fallrule.method.Method;
import org.fallrule.method.Symbol;

/** The page of a method of calculation, in Markdown. */
public final class MethodReference {
    private MethodReference() {}

    public static String page(Method method) {
        StringBuilder text = new StringBuilder();
        text.append("# ").append(method.title()).append("\n\n");
        text.append(method.gives()).append("\n\n");
        text.append("## Formula\n\n");
        method.formulas().forEach(formula -> text.append("    ").append(formula).append('\n'));
        text.append("\n| symbol | meaning | unit |\n| --- | --- | --- |\n");
        method.symbols().forEach(symbol -> row(text, symbol));
        list(text, "Source", method.sources());
        list(text, "Limits", method.limits());
        return text.toString();
    }

    private static void row(StringBuilder text, Symbol symbol) {
        text.append("| ")
                .append(symbol.sign())
                .append(" | ")
                .append(symbol.meaning())
                .append(" | ")
                .append(symbol.unit())
                .append(" |\n");
    }

    private static void list(StringBuilder text, String title, List<String> lines) {
        text.append("\n## ").append(title).append("\n\n");
        lines.forEach(line -> text.append("- ").append(line).append('\n'));
    }
}
