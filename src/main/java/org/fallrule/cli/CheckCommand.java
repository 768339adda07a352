package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Report;
import org.fallrule.report.Visible;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.report.text.TextReport;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks sites and writes their reports. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks the plan in each site folder and writes its report.",
        footer = {
            "",
            "Exit code: 0 nothing binding fails, 1 a binding rule fails (with --strict also what",
            "is open), 2 the input or the command could not be used."
        })
final class CheckCommand implements Callable<Integer> {
    /** Faults of one site that are printed; a wrong coordinate system makes one for every feature. */
    private static final int MOST_FAULTS = 50;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SITE", arity = "1..*", description = "Site folders.")
    private List<Path> sites = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to write each site's report, in a folder of its own.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            split = ",",
            description = "What to write: ${COMPLETION-CANDIDATES}. All by default.")
    private Set<ReportFormat> formats = new LinkedHashSet<>(List.of(ReportFormat.values()));

    @Option(names = "--paper", paramLabel = "SIZE", description = "${COMPLETION-CANDIDATES}. Default: letter.")
    private Paper paper = Paper.letter;

    @Mixin
    private BookOptions books = new BookOptions();

    @Option(names = "--strict", description = "Exit 1 also when something is borderline or cannot be told.")
    private boolean strict;

    @Option(
            names = "--remedies",
            paramLabel = "HOW",
            description = {
                "What to look for that would pass: ${COMPLETION-CANDIDATES}.",
                "Default: each for one site, none for several."
            })
    private Optional<RemedySearch> remedies = Optional.empty();

    @Option(names = "--quiet", description = "Print one line for each site.")
    private boolean quiet;

    @Option(names = "--today", paramLabel = "DATE", description = "The day to hold waivers against. Default: today.")
    private LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @Override
    public Integer call() {
        RuleLibrary library = books.library();
        Optional<ReportFolder> reports =
                out.map(folder -> ReportFolder.prepare(folder, sites, formats, new PrintSettings(paper, today)));
        int worst = Fallrule.PASSES;
        for (Path site : sites) {
            worst = Math.max(worst, checkedSafely(site, library, reports));
        }
        return worst;
    }

    private int checkedSafely(Path site, RuleLibrary library, Optional<ReportFolder> reports) {
        try {
            return checked(site, library, reports);
        } catch (UnusableInput e) {
            tell(site, e.faults().stream().map(Fault::toString).toList());
        } catch (RuntimeException e) {
            tell(site, List.of("this is a fault of the program, please report it: " + e));
        }
        return Fallrule.UNUSABLE;
    }

    private void tell(Path site, List<String> faults) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(Visible.of(site + " could not be checked:"));
        faults.stream().limit(MOST_FAULTS).forEach(fault -> err.println("  " + Visible.of(fault)));
        if (faults.size() > MOST_FAULTS) {
            err.println("  and " + (faults.size() - MOST_FAULTS) + " more");
        }
        err.flush();
    }

    private int checked(Path folder, RuleLibrary library, Optional<ReportFolder> reports) {
        Site site = SiteReader.read(folder);
        Jurisdiction place = books.place(site, library);
        RuleBook book = books.book(place, site, library, today);
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Review review = Reviewer.review(analysis, book, today);
        RemedySearch search = remedies.orElse(sites.size() > 1 ? RemedySearch.none : RemedySearch.each);
        Report report = new Report(analysis, place.spoken(), book, review, search.in(analysis, book, review, today));
        reports.ifPresent(each -> each.write(report));
        print(report, reports);
        boolean open = strict && review.leavesOpen();
        return review.failsPlan() || open ? Fallrule.FAILS : Fallrule.PASSES;
    }

    private void print(Report report, Optional<ReportFolder> reports) {
        PrintWriter screen = spec.commandLine().getOut();
        if (quiet) {
            screen.println(Visible.of(report.site().id() + ": " + report.verdict()));
        } else {
            screen.print(TextReport.write(report, Terminal.ink()));
            screen.println();
            reports.ifPresent(place -> screen.println(Visible.of("Report written to " + place.of(report.site()))));
        }
        screen.flush();
    }
}
