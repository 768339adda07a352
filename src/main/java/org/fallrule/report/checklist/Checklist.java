package org.fallrule.report.checklist;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.report.Report;
import org.fallrule.rulebook.ChecklistItem;
import org.fallrule.rulebook.ShownBy;
import org.fallrule.site.Site;

/**
 * Holds the checklist of the rule books against a plan. That an item is shown says only that the files have it, not that it is
 * right.
 */
public final class Checklist {
    private static final String SITE_FILE = "site.yaml";

    private final Report report;
    private final Site site;

    private Checklist(Report report) {
        this.report = report;
        this.site = report.site();
    }

    /** The items in the order of the books. */
    public static List<ChecklistEntry> of(Report report) {
        Checklist checklist = new Checklist(report);
        return report.book().checklist().stream().map(checklist::entry).toList();
    }

    /** How many items there are of each standing. */
    public static Map<Standing, Long> counts(List<ChecklistEntry> entries) {
        Map<Standing, Long> counts = new EnumMap<>(Standing.class);
        Arrays.stream(Standing.values()).forEach(standing -> counts.put(standing, 0L));
        entries.forEach(entry -> counts.merge(entry.standing(), 1L, Long::sum));
        return counts;
    }

    /** The counts in a line: {@code 20 shown, 3 stated absent, 8 missing, 11 to be shown by hand}. */
    public static String summary(List<ChecklistEntry> entries) {
        return counts(entries).entrySet().stream()
                .map(count -> count.getValue() + " " + count.getKey().spoken())
                .collect(Collectors.joining(", "));
    }

    private ChecklistEntry entry(ChecklistItem item) {
        Evidence evidence = of(item.shownBy());
        return new ChecklistEntry(item, evidence.standing(), evidence.says(), evidence.settledBy());
    }

    private Evidence of(ShownBy shownBy) {
        if (shownBy instanceof ShownBy.Features features) {
            return new FeaturesShown(site, features).evidence();
        }
        if (shownBy instanceof ShownBy.Stated stated) {
            return stated(stated.fact());
        }
        if (shownBy instanceof ShownBy.Reported reported) {
            return reported(reported.part());
        }
        if (shownBy instanceof ShownBy.AllOf all) {
            return Evidence.all(all.parts().stream().map(this::of).toList());
        }
        if (shownBy instanceof ShownBy.AnyOf any) {
            return Evidence.any(any.parts().stream().map(this::of).toList());
        }
        return new Evidence(Standing.TO_BE_SHOWN_BY_HAND, "no file shows it", "put it on the sheet by hand");
    }

    private Evidence stated(ShownBy.SiteFact fact) {
        return switch (fact) {
            case NAME -> stated("site", Optional.of(site.name()));
            case COORDINATES -> stated("crs", Optional.of(site.crs()).filter(crs -> !crs.isBlank()));
            case DATUM -> stated("datum", site.datum());
            case SURVEY_DATE -> stated("survey: date", site.survey().date().map(Object::toString));
            case SURVEY_SOURCE -> stated("survey: source", site.survey().source());
        };
    }

    private static Evidence stated(String key, Optional<String> value) {
        return value.map(text -> Evidence.shown(key + ": " + text))
                .orElseGet(() -> Evidence.missing(key + " is not given", "give " + key + " in " + SITE_FILE));
    }

    private Evidence reported(ShownBy.Part part) {
        boolean anything = site.layers().values().stream()
                .anyMatch(layer -> !layer.features().isEmpty());
        boolean pipes = !report.analysis().network().runs().isEmpty();
        boolean heights = report.analysis().ground().isPresent()
                || report.analysis().network().runs().stream()
                        .anyMatch(run ->
                                run.invertUp().isPresent() || run.invertDown().isPresent());
        return switch (part) {
            case PLAN -> reported(anything, "on the plan of this report", "supply the plan's layers");
            case PIPE_TABLE -> reported(pipes, "in the tables of this report", "supply the layer pipe");
            case LONG_SECTIONS ->
                reported(
                        pipes && heights,
                        "in the long sections of this report",
                        "supply pipes with inverts, and ground");
        };
    }

    private static Evidence reported(boolean shown, String where, String settledBy) {
        return shown ? Evidence.shown(where) : Evidence.missing("nothing to draw it from", settledBy);
    }
}
