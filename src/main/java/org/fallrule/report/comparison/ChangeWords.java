package org.fallrule.report.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.comparison.DataChange;

/** Puts what two states say differently into words. */
public final class ChangeWords {
    /** Changes of one kind to one kind of feature that are told one by one; a new survey moves every spot. */
    private static final int TOLD = 12;

    private ChangeWords() {}

    /**
     * A line for a reader.
     *
     * @param kind how the lines under it differ
     * @param says the difference in words
     */
    public record Line(DataChange.Kind kind, String says) {}

    /** One difference: {@code outfall OF-1: moved 4.92 ft in plan}. */
    public static String of(DataChange change) {
        String from = change.from().orElse("not said");
        String to = change.to().orElse("not said");
        return switch (change.kind()) {
            case ADDED -> change.about();
            case REMOVED -> change.about();
            case RENAMED ->
                change.about() + ": was " + from + "; it lies in the same place, so it is taken as the same";
            case MOVED ->
                change.about() + ": "
                        + change.by().map(by -> moved(by, change.what())).orElse("moved");
            case LAYER -> change.about() + ": " + from + ", now " + to;
            case SITE, ATTRIBUTE -> change.about() + ", " + change.what() + ": " + from + ", now " + to;
        };
    }

    private static String moved(DataChange.Moved moved, String way) {
        String amount = moved.shown();
        if (way.equals("in plan")) {
            return "moved " + amount + " in plan";
        }
        return (moved.by().metres() > 0 ? "raised " : "lowered ") + amount;
    }

    /** All differences; where there are many of a kind, the first of them and how many more. */
    public static List<Line> lines(List<DataChange> changes) {
        Map<String, List<DataChange>> groups = new LinkedHashMap<>();
        changes.forEach(change ->
                groups.computeIfAbsent(group(change), any -> new ArrayList<>()).add(change));
        List<Line> lines = new ArrayList<>();
        groups.values().forEach(group -> {
            group.stream().limit(TOLD).forEach(change -> lines.add(new Line(change.kind(), of(change))));
            if (group.size() > TOLD) {
                lines.add(new Line(
                        group.get(0).kind(),
                        "and " + (group.size() - TOLD) + " more of "
                                + group.get(0)
                                        .feature()
                                        .map(each -> each.role().spoken())
                                        .orElse("these")
                                + "; comparison.json lists them"));
            }
        });
        return lines;
    }

    private static String group(DataChange change) {
        return change.kind() + change.feature().map(each -> each.role().word()).orElse("");
    }
}
