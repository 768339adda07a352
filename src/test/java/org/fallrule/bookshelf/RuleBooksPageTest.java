package org.fallrule.bookshelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The samples in docs/rule-books.md make the books that the page says they make. */
class RuleBooksPageTest {
    private static final Pattern SAMPLE =
            Pattern.compile("(?s)```(?:yaml|json) (book|add|examples|house|map) (\\w+)\\n(.*?)```");
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    @TempDir
    Path folder;

    private RuleLibrary written() throws IOException {
        Files.createDirectories(folder.resolve("counties"));
        Files.createDirectories(folder.resolve("house"));
        Files.copy(Path.of("rules/baseline.yaml"), folder.resolve("baseline.yaml"));
        Matcher samples = SAMPLE.matcher(Files.readString(Path.of("docs/rule-books.md")));
        while (samples.find()) {
            String name = samples.group(2);
            Path file = switch (samples.group(1)) {
                case "examples" -> folder.resolve("counties/" + name + ".examples.yaml");
                case "map" -> folder.resolve("counties.geojson");
                case "house" -> folder.resolve("house/" + name + ".yaml");
                default -> folder.resolve("counties/" + name + ".yaml");
            };
            Files.writeString(file, samples.group(3), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
        return new RuleLibrary(folder, "rules");
    }

    @Test
    void theCountyOfThePageVerifies() throws IOException {
        RuleLibrary library = written();
        BookProof proof = BookProof.of(library, BookName.named("ambermere", library), DAY);

        assertThat(proof.faults()).isEmpty();
        assertThat(proof.examples())
                .hasSize(5)
                .allSatisfy(example -> assertThat(example.misses()).isEmpty());
    }

    @Test
    void theFirmOfThePageVerifiesAndTightens() throws IOException {
        RuleLibrary library = written();

        assertThat(BookProof.of(library, BookName.named("copperbeck", library), DAY)
                        .faults())
                .isEmpty();
        assertThat(BookText.of(
                        library.open("ambermere", Optional.of("copperbeck"), DAY), Optional.of("outfall-walk-setback")))
                .contains("at_least: 9 ft [rules/house/copperbeck.yaml:4]", "overrides 8 ft");
    }

    @Test
    void theMapOfThePageIsReadAndTheCountyLiesOnIt() throws IOException {
        assertThat(CountyMap.of(written()).orElseThrow().counties()).containsExactly("ambermere");
    }

    @Test
    void onlyOneLanguageOfSamplesIsOnThePage() throws IOException {
        long fences = Files.readString(Path.of("docs/rule-books.md"))
                .lines()
                .filter(line -> line.startsWith("```") && line.length() > 3)
                .count();
        long samples = SAMPLE.matcher(Files.readString(Path.of("docs/rule-books.md")))
                .results()
                .count();

        assertThat(samples).as("every fenced sample is run").isEqualTo(fences).isPositive();
    }
}
