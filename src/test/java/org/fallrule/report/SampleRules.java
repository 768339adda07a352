package org.fallrule.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;

/** Invented rule books: a baseline, a county and a firm's own. */
public final class SampleRules {
    private static final String BASELINE = """
            title: Plain drainage rules (invented, for tests)
            climate: {freezing: true, frost_depth: 24 in}
            rules:
              outfall-walk-setback:
                title: An outfall keeps away from public walks
                check: clearance
                from: outfall
                to: walk
                to_where: "access = 'public'"
                at_least: 4 ft
                weight: must
                basis: {kind: practice}
              outfall-on-lot:
                title: An outfall stands on the site's own lot
                check: within
                subject: outfall
                area: lot
                area_where: "own = true"
                reach_at_most: 0 ft
                weight: must
                basis: {kind: ordinance, document: Sample Land Code (invented), section: "12-4"}
              pipe-building-setback:
                title: A pipe keeps away from buildings
                check: clearance
                from: pipe
                to: building
                at_least: 3 ft
                weight: should
                basis: {kind: practice, note: "So that a trench does not undermine a footing."}
              pipe-lot-line:
                title: A pipe keeps away from the neighbours
                check: clearance
                from: pipe
                to: lot
                to_where: "own = false"
                at_least: 5 ft
                weight: should
                basis: {kind: practice}
              pipe-least-slope:
                title: A pipe falls enough to run clean
                check: slope
                at_least: [{when: "diameter_in <= 2.5", is: 1/4 in/ft}, {when: "diameter_in <= 6", is: 1/8 in/ft}, {is: 1/16 in/ft}]
                weight: must
                basis: {kind: model_code, document: Sample Plumbing Code (invented), section: table 7, known: from memory}
              pipe-cover:
                title: Enough ground lies over a pipe
                check: cover
                at_least: [{when: "to_outfall_ft <= 6", is: 0 in}, {when: "above = 'drive'", is: 12 in}, {is: 9 in}]
                weight: must
                basis: {kind: manual, document: Sample Yard Drain Manual (invented), section: "3.1"}
              gas-separation:
                title: A pipe keeps away from gas
                check: separation
                from: utility
                from_where: "kind = 'gas'"
                beside_at_least: 3 ft
                across_at_least: 12 in
                near_crossing: 3 ft
                size_if_unknown: 2 in
                weight: must
                basis: {kind: manual, document: Sample Yard Drain Manual (invented), section: "5.2"}
              water-separation:
                title: A pipe keeps away from potable water
                check: separation
                from: utility
                from_where: "kind = 'water_service'"
                beside_at_least: 5 ft
                across_at_least: 12 in
                near_crossing: 5 ft
                size_if_unknown: 2 in
                weight: must
                basis: {kind: standard, document: Sample Water Works Standard (invented), section: "8.8"}
              septic-setback:
                title: An outfall keeps away from a septic field
                check: clearance
                from: outfall
                to: septic
                at_least: 10 ft
                weight: must
                basis: {kind: ordinance, document: Sample Health Code (invented), section: "2"}
              sprinkler-hand-dig:
                title: Dig by hand along sprinkler lines
                check: hand_dig
                from: utility
                from_where: "kind = 'irrigation'"
                zone: 24 in
                size_if_unknown: 2 in
                weight: note
                basis: {kind: practice}
            """;

    private static final String COUNTY = """
            title: Larkmoor County lot drainage (invented, for tests)
            builds_on: ../baseline.yaml
            rules:
              outfall-walk-setback:
                at_least: 5 ft
                basis: {kind: ordinance, document: Larkmoor Drainage Manual (invented), section: "4.2"}
            """;

    private static final String HOUSE = """
            title: Stonebrook house rules (invented, for tests)
            rules:
              pipe-cover:
                at_least: [{when: "to_outfall_ft <= 6", is: 0 in}, {when: "above = 'drive'", is: 12 in}, {is: 12 in}]
                basis: {kind: practice, note: "Mowers and stakes reach deeper than 9 in."}
            """;

    private SampleRules() {}

    /** The books of the county with the firm's own over it. */
    public static RuleBook load() {
        try {
            Path folder = Files.createTempDirectory("rules");
            write(folder.resolve("baseline.yaml"), BASELINE);
            write(folder.resolve("counties/larkmoor.yaml"), COUNTY);
            write(folder.resolve("house/stonebrook.yaml"), HOUSE);
            try {
                return new RuleLibrary(folder, "rules").load("larkmoor", Optional.of("stonebrook"));
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.resolveSibling("."));
        Files.writeString(file, text);
    }

    private static void delete(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
