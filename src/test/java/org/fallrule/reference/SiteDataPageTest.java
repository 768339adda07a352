package org.fallrule.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.reader.SiteReader;
import org.fallrule.rulebook.Checks;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;

/** The tables of docs/site-data.md are what the checks want. The rest of the page is written by hand. */
class SiteDataPageTest {
    private static final Path PAGE = Path.of("docs/site-data.md");
    private static final String BEGIN = "<!-- tables written from the checks: begin -->\n";
    private static final String END = "<!-- tables written from the checks: end -->\n";

    /** Made once, as it takes many reviews. */
    private static final String TABLES = tables();

    private static String tables() {
        RuleLibrary library = new RuleLibrary(Path.of("rules"), "rules");
        List<RuleBook> books = library.counties().stream()
                .map(county -> library.load(county, Optional.empty()))
                .toList();
        // the complete one, and the one with the most attributes
        List<Site> plans = Stream.of("quillfeather-8", "harrow-14")
                .map(name -> SiteReader.read(Path.of("sample-sites", name)))
                .toList();
        return DataReference.tables(books, plans, library.load("larkmoor", Optional.empty()));
    }

    @Test
    void theTablesAreFresh() throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        assertThat(from).isGreaterThanOrEqualTo(BEGIN.length());
        assertThat(to).isGreaterThan(from - 1);
        if (Boolean.getBoolean("fallrule.renew")) {
            Files.writeString(PAGE, page.substring(0, from) + TABLES + page.substring(to));
            return;
        }
        assertThat(page.substring(from, to))
                .as("renew it: mvn test -Dtest=SiteDataPageTest -Dfallrule.renew=true")
                .isEqualTo(TABLES);
    }

    @Test
    void everyCheckAndEveryRoleIsInThem() {
        assertThat(Checks.all().names()).allSatisfy(check -> assertThat(TABLES).contains("| [" + check + "]("));
        assertThat(Role.words()).allSatisfy(role -> assertThat(TABLES).contains("\n| " + role + " | "));
        assertThat(TABLES)
                .as("what a check cannot do without, told by taking it away")
                .containsPattern("\\| \\[slope\\].*pipe invert down, pipe invert up")
                .containsPattern("\\| \\[separation\\].*utility kind");
    }
}
