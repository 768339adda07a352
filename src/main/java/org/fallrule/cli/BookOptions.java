package org.fallrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.docket.BooksInForce;
import org.fallrule.rulebook.RuleLibrary;
import picocli.CommandLine.Option;

/** The options that pick the rule books which apply to a site. */
final class BookOptions {
    @Option(
            names = "--county",
            paramLabel = "NAME",
            description = "The county whose rules apply; wins over site.yaml and over where the lot lies.")
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

    /** The books in force on a day, of which the options name some; the others each site names. */
    BooksInForce inForce(RuleLibrary library, LocalDate day) {
        return new BooksInForce(library, county, house, day);
    }

    /** What the options name. */
    String said() {
        return county.orElse("") + "|" + house.orElse("");
    }
}
