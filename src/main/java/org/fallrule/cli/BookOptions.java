package org.fallrule.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.docket.BooksInForce;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
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

    /** The books in force on a day, for every site of a run. */
    BooksInForce inForce(RuleLibrary library, LocalDate day) {
        return new BooksInForce(library, county, house, day);
    }

    /** What the options name. */
    String said() {
        return county.orElse("") + "|" + house.orElse("");
    }

    /** The county or counties whose rules apply to a site. */
    Jurisdiction place(Site site, RuleLibrary library) {
        return Jurisdiction.of(county, site, library);
    }

    /** The firm whose rules are laid on top. */
    Optional<String> house(Site site) {
        return house.or(site::house);
    }

    /** The books in force on a day. */
    RuleBook book(Jurisdiction place, Site site, RuleLibrary library, LocalDate day) {
        return place.book(library, house(site), day);
    }
}
