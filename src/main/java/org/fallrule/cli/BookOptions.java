package org.fallrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import picocli.CommandLine.Option;

/** The options that pick the rule books which apply to a site. */
final class BookOptions {
    @Option(names = "--county", paramLabel = "NAME", description = "The county whose rules apply; wins over site.yaml.")
    private Optional<String> county = Optional.empty();

    @Option(names = "--house", paramLabel = "NAME", description = "A firm's own rules on top; wins over site.yaml.")
    private Optional<String> house = Optional.empty();

    @Option(
            names = "--rules",
            paramLabel = "DIR",
            description = "The folder of rule books. Default: rules here, else beside the jar.")
    private Optional<Path> rules = Optional.empty();

    RuleLibrary library() {
        return RulesFolder.open(rules);
    }

    /** The county whose rules apply to a site. */
    String county(Site site, RuleLibrary library) {
        return county.or(site::county)
                .orElseThrow(() -> new UnusableInput(
                        Place.of("site.yaml").field("county"),
                        "says no county; name one of " + String.join(", ", library.counties())
                                + ", here or with --county"));
    }

    /** The books in force on a day. */
    RuleBook book(Site site, RuleLibrary library, LocalDate day) {
        return library.load(county(site, library), house.or(site::house), day);
    }
}
