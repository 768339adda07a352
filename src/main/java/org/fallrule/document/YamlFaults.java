package org.fallrule.document;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Locale;
import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** Puts the parser's complaints about a YAML document into a place and plain words. */
final class YamlFaults {
    private final String file;

    YamlFaults(String file) {
        this.file = file;
    }

    Place place(JsonLocation location) {
        return Place.of(file).at(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    UnusableInput of(JsonProcessingException e) {
        if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblem() != null) {
            return fault(where(marked).orElseGet(() -> place(e)), marked.getProblem());
        }
        String says = String.valueOf(e.getOriginalMessage()).lines().findFirst().orElse("");
        return fault(place(e), says.startsWith("Expected a field name") ? "a key must be a single plain value" : says);
    }

    private UnusableInput fault(Place where, String problem) {
        boolean ofTabs = problem.contains("\\t");
        return new UnusableInput(
                where, "not readable as YAML: " + problem + (ofTabs ? "; indent with spaces, not tabs" : ""));
    }

    /** Where the trouble is; where the text simply ends, what was left open. */
    private Optional<Place> where(MarkedYAMLException marked) {
        boolean ended = marked.getProblem().toLowerCase(Locale.ROOT).contains("end of stream")
                || marked.getProblem().contains("<stream end>");
        Mark mark = ended && marked.getContextMark() != null ? marked.getContextMark() : marked.getProblemMark();
        return Optional.ofNullable(mark).map(each -> Place.of(file).at(each.getLine() + 1, each.getColumn() + 1));
    }

    private Place place(JsonProcessingException e) {
        return e.getLocation() == null ? Place.of(file) : place(e.getLocation());
    }
}
