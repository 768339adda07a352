package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.OneSite;
import org.fallrule.comparison.Submittal;
import org.fallrule.docket.BooksInForce;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Visible;
import org.fallrule.report.comparison.ComparisonReport;
import org.fallrule.report.comparison.ComparisonText;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Holds two states of a site against each other. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Says what changed from one submittal of a site to the next, or from the plan to the work as built:"
                        + " findings gone, new, better, worse; features and data changed; inverts, rims, slopes and places as built"
                        + " against the design.",
        footer = {
            "",
            "The rules of AFTER are applied to both, so that what changed is the plan alone.",
            "",
            "Exit code: 0 nothing binding fails in AFTER and nothing is new or worse, 1 something",
            "does or is, or work lies beyond its tolerance, 2 the input or the command could not be used."
        })
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "The site folder of the earlier state, or the plan.")
    private Path earlier = Path.of("");

    @Parameters(
            index = "1",
            paramLabel = "AFTER",
            description =
                    "The site folder of the later state. What is as built has that status, or is a point of the layer"
                            + " as_built; a folder with nothing but such points will do.")
    private Path later = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to write comparison.html, comparison.json and comparison.txt.")
    private Optional<Path> out = Optional.empty();

    @Mixin
    private BookOptions books = new BookOptions();

    @Option(names = "--own-rules", description = "Hold each state against the rules that it names itself.")
    private boolean ownRules;

    @Option(names = "--quiet", description = "Print one line.")
    private boolean quiet;

    @Option(names = "--today", paramLabel = "DATE", description = "The day to hold waivers against. Default: today.")
    private LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @Override
    public Integer call() {
        BooksInForce inForce = books.inForce(books.library(), today);
        Optional<ComparisonFolder> files = out.map(folder -> ComparisonFolder.prepare(folder, earlier, later));
        Site after = SiteReader.read(later);
        OneSite.refuseTwo(SiteReader.read(earlier), after);
        Site before = SiteReader.read(earlier, after.frame());
        ComparisonReport report = compared(before, after, inForce);
        files.ifPresent(each -> each.write(report));
        print(report);
        Comparison comparison = report.comparison();
        return comparison.fails() || comparison.gotWorse() ? Fallrule.FAILS : Fallrule.PASSES;
    }

    private ComparisonReport compared(Site before, Site after, BooksInForce inForce) {
        Site governing = after.county().isPresent() || after.ownLot().isPresent() ? after : before;
        Jurisdiction place = inForce.place(governing);
        RuleBook book = inForce.book(place, governing);
        String words = "Rules of " + named(place, inForce.house(governing));
        RuleBook earlierBook = book;
        if (ownRules) {
            Jurisdiction own = inForce.place(before);
            earlierBook = inForce.book(own, before);
            words = "Each is held against its own rules: before those of " + named(own, inForce.house(before))
                    + ", after those of " + named(place, inForce.house(governing));
        } else {
            words += ", applied to both";
            if (!place.statedBy().file().startsWith("--")) {
                words += ", as the " + (governing.equals(after) ? "later" : "earlier") + " state has them";
            }
        }
        return new ComparisonReport(
                Comparison.of(Submittal.of(before, earlierBook, today), Submittal.of(after, book, today)), words + ".");
    }

    private static String named(Jurisdiction place, Optional<String> house) {
        return place.spoken()
                + house.map(name -> " with those of the firm " + name).orElse("");
    }

    private void print(ComparisonReport report) {
        PrintWriter screen = spec.commandLine().getOut();
        if (quiet) {
            screen.println(Visible.of(report.comparison().after().site().id() + ": "
                    + report.comparison().verdict()));
        } else {
            screen.print(ComparisonText.write(report));
            out.ifPresent(folder -> screen.println(
                    Visible.of("\nComparison written to " + folder).strip()));
        }
        screen.flush();
    }
}
