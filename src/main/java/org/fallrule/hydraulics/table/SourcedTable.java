package org.fallrule.hydraulics.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.method.Answer;

/**
 * A table of values by name, each with the source that prints it. Sources differ, so that a name alone is answered only where
 * one source speaks; and a name that no source knows is never answered with a value of something else.
 *
 * <p>Tables that come with the program: {@link #roughness}, {@link #infiltration}, {@link #bareSoil}, {@link #entrance}. A
 * county's or firm's own table, read with {@link #parse}, is laid over them.
 */
public final class SourcedTable {
    private final String subject;
    private final List<Entry> entries;

    /**
     * One value.
     *
     * @param name what it is of: {@code pvc_sdr35}
     * @param source short name of the source, to choose by
     * @param document the source in full
     * @param known how the value is known: read, or from memory
     * @param value the value
     * @param least the least that the source prints, where it prints a range
     * @param most the greatest that it prints
     */
    public record Entry(
            String name,
            String source,
            String document,
            String known,
            Quantity value,
            Optional<Quantity> least,
            Optional<Quantity> most) {}

    private SourcedTable(String subject, List<Entry> entries) {
        this.subject = subject;
        this.entries = List.copyOf(entries);
    }

    /** Manning's n by the pipe's material, as the plan's words name it. */
    public static SourcedTable roughness() {
        return read(DataFile.shipped("roughness"));
    }

    /** Infiltration rate by the soil's texture or hydrologic group. */
    public static SourcedTable infiltration() {
        return read(DataFile.shipped("infiltration"));
    }

    /** Greatest velocity that bare soil stands. */
    public static SourcedTable bareSoil() {
        return read(DataFile.shipped("bare-soil-velocity"));
    }

    /** Entrance loss by the shape of the pipe's mouth. */
    public static SourcedTable entrance() {
        return read(DataFile.shipped("entrance-loss"));
    }

    /**
     * A table from its text.
     *
     * @param shownAs the file to show in messages
     * @throws UnusableInput if it is no such table; names the line
     */
    public static SourcedTable parse(String text, String shownAs) {
        return read(new DataFile(Yaml.parse(text, shownAs)));
    }

    private static SourcedTable read(DataFile file) {
        Dimension dimension = file.dimension("dimension");
        List<Entry> entries = new ArrayList<>();
        for (DataFile source : file.rows("sources")) {
            for (DataFile row : source.rows("rows")) {
                entries.add(new Entry(
                        row.text("of"),
                        source.text("source"),
                        source.text("document"),
                        row.find("known").or(() -> source.find("known")).orElse("not said"),
                        row.quantity("value", dimension),
                        row.findQuantity("least", dimension),
                        row.findQuantity("most", dimension)));
            }
        }
        return new SourcedTable(file.text("of_what"), entries);
    }

    public List<Entry> entries() {
        return entries;
    }

    /** The value that a source prints of a name; none when it prints none. */
    public Answer<Entry> find(String name, String source) {
        List<Entry> found = named(name);
        return found.stream()
                .filter(entry -> entry.source().equals(source))
                .findFirst()
                .map(Answer::of)
                .orElseGet(() -> found.isEmpty()
                        ? unknown(name)
                        : Answer.none(
                                source + " prints no " + subject + " of " + name + "; " + sources(found) + " does"));
    }

    /** The value of a name that a single source prints; none when no source or several do. */
    public Answer<Entry> only(String name) {
        List<Entry> found = named(name);
        if (found.size() == 1) {
            return Answer.of(found.get(0));
        }
        return found.isEmpty()
                ? unknown(name)
                : Answer.none("sources differ on the " + subject + " of " + name + "; choose one: " + sources(found));
    }

    /** This table with another's values in place of all that this one says of the same names. */
    public SourcedTable overlaid(SourcedTable over) {
        Map<String, List<Entry>> byName = new LinkedHashMap<>();
        byName.putAll(
                entries.stream().collect(Collectors.groupingBy(Entry::name, LinkedHashMap::new, Collectors.toList())));
        byName.putAll(over.entries.stream()
                .collect(Collectors.groupingBy(Entry::name, LinkedHashMap::new, Collectors.toList())));
        return new SourcedTable(
                subject, byName.values().stream().flatMap(List::stream).toList());
    }

    private List<Entry> named(String name) {
        return entries.stream().filter(entry -> entry.name().equals(name)).toList();
    }

    private Answer<Entry> unknown(String name) {
        return Answer.none("no " + subject + " of \"" + name + "\" is known; known are "
                + entries.stream().map(Entry::name).distinct().collect(Collectors.joining(", ")));
    }

    private static String sources(List<Entry> found) {
        return found.stream().map(Entry::source).collect(Collectors.joining(" or "));
    }
}
