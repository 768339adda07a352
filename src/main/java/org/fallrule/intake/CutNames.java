package org.fallrule.intake;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Names of columns as a shapefile leaves them, which cuts them to ten letters (dBASE III): {@code PIPE_DIAMETER} is {@code PIPE_DIAME}. */
final class CutNames {
    private static final int LETTERS = 10;
    /** Letters that are left of a name; fewer, the rest being marks between words, say too little. */
    private static final int LEAST = 6;

    private CutNames() {}

    /**
     * Some names, and what is left of them in columns that may have been cut.
     *
     * @param unclear what is left of several names
     */
    static List<String> with(List<String> names, Set<String> columns, List<String> unclear) {
        Stream<String> cut = columns.stream()
                .filter(column -> column.length() == LETTERS)
                .map(TradeWords::plain)
                .filter(left -> left.length() >= LEAST && !unclear.contains(left))
                .filter(left -> names.stream().map(TradeWords::plain).anyMatch(name -> isCut(name, left)));
        return Stream.concat(names.stream(), cut).distinct().toList();
    }

    private static boolean isCut(String name, String left) {
        return name.length() > left.length() && name.startsWith(left);
    }
}
