package org.fallrule.method;

import java.util.ArrayList;
import java.util.List;

/**
 * A published method of calculation, described for whoever must judge a result: a reviewer reads here what was computed and
 * where to look it up. Stands as {@code METHOD} in the class that computes it; its page in docs/methods is written from it.
 *
 * @param name its name in commands and file names: {@code sheet_flow}
 * @param title its name in the trade
 * @param gives what it gives, in a sentence
 * @param formulas its formulas, in the source's symbols
 * @param symbols the symbols, in the order of the formulas
 * @param sources document, edition, section or equation; how the value is known where it was not read there
 * @param limits where it stops to hold, and what is done there
 */
public record Method(
        String name,
        String title,
        String gives,
        List<String> formulas,
        List<Symbol> symbols,
        List<String> sources,
        List<String> limits) {

    public Method {
        formulas = List.copyOf(formulas);
        symbols = List.copyOf(symbols);
        sources = List.copyOf(sources);
        limits = List.copyOf(limits);
    }

    /** The beginning of a description; the rest is added to it. */
    public static Method named(String name, String title, String gives) {
        return new Method(name, title, gives, List.of(), List.of(), List.of(), List.of());
    }

    public Method formula(String formula) {
        return new Method(name, title, gives, with(formulas, formula), symbols, sources, limits);
    }

    public Method symbol(String sign, String meaning, String unit) {
        return new Method(
                name, title, gives, formulas, with(symbols, new Symbol(sign, meaning, unit)), sources, limits);
    }

    public Method source(String source) {
        return new Method(name, title, gives, formulas, symbols, with(sources, source), limits);
    }

    public Method limit(String limit) {
        return new Method(name, title, gives, formulas, symbols, sources, with(limits, limit));
    }

    private static <T> List<T> with(List<T> list, T item) {
        List<T> longer = new ArrayList<>(list);
        longer.add(item);
        return longer;
    }
}
