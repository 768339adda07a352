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
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.fallrule.docket.PlanReview;
import org.fallrule.docket.RemedySearch;
import org.fallrule.docket.RunDigest;
import org.fallrule.docket.Stack;
import org.fallrule.docket.Submittal;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.Report;
import org.fallrule.report.Visible;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.report.text.TextReport;
import org.fallrule.report.text.Wrapped;
import org.fallrule.rulebook.RuleLibrary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks sites and writes their reports. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks the plan in each site folder and writes its report; for several sites an index too.",
        footer = {
            "",
            "Exit code: 0 nothing binding fails, 1 a binding rule fails (with --strict also what is open), 2 the input"
                    + " or the command could not be used."
        })
final class CheckCommand implements Callable<Integer> {
    /** Faults of one site that are printed; a wrong coordinate system makes one for every feature. */
    private static final int MOST_FAULTS = 50;

    private static final int WIDTH = 80;

    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "SITE",
            arity = "1..*",
            description = "Site folders, folders that hold site folders, patterns such as 'stack/*', or @FILE with one"
                    + " of these on each line.")
    private List<String> sites = new ArrayList<>();

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

    @Option(
            names = "--watch",
            description =
                    "Check one site anew whenever its files or the rule books change; an open report.html shows the"
                            + " new state by itself. Without --format all but pdf is written. Ctrl-C ends it.")
    private boolean watch;

    @Option(names = "--today", paramLabel = "DATE", description = "The day to hold waivers against. Default: today.")
    private LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @Option(
            names = "--jobs",
            paramLabel = "N",
            description = "How many sites to check at the same time. Default: one for each processor.")
    private int jobs = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--resume",
            description = "Of several sites, take over the reports in --out that are whole and were made from the same"
                    + " files, rule books, options and day.")
    private boolean resume;

    @Override
    public Integer call() {
        if (jobs < 1) {
            throw new UnusableInput(Place.of("--jobs"), jobs + " sites at the same time are none; give 1 or more");
        }
        Stack stack = Stack.of(sites, out);
        RuleLibrary library = books.library();
        if (watch) {
            return watched(library, stack);
        }
        PlanReview review = new PlanReview(books.inForce(library, today), search(stack));
        Optional<ReportFolder> reports = out.map(folder -> ReportFolder.prepare(
                folder,
                stack.sites().stream().map(Submittal::path).toList(),
                formats,
                new PrintSettings(paper, today)));
        if (stack.single()) {
            return checkedSafely(stack.sites().get(0).path(), review, reports);
        }
        return new ManySites(stack, review, reports, new SiteLines(spec.commandLine(), quiet), strict, jobs)
                .check(resume, new RunDigest(Version.build(), options(), library.folder()), today);
    }

    private int watched(RuleLibrary library, Stack stack) {
        if (!stack.single()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--watch takes one site; found " + stack.sites().size() + ".");
        }
        Path site = stack.sites().get(0).path();
        Set<ReportFormat> written =
                spec.commandLine().getParseResult().hasMatchedOption("--format") ? formats : SiteWatch.FORMATS;
        Optional<ReportFolder> reports = out.map(
                folder -> ReportFolder.prepare(folder, List.of(site), written, new PrintSettings(paper, today)));
        PrintWriter screen = spec.commandLine().getOut();
        try (SiteWatch each = new SiteWatch(
                site, books, library, today, reports, screen, spec.commandLine().getErr())) {
            return each.run();
        }
    }

    private int checkedSafely(Path site, PlanReview review, Optional<ReportFolder> reports) {
        try {
            return checked(site, review, reports);
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

    private int checked(Path folder, PlanReview review, Optional<ReportFolder> reports) {
        Report report = review.of(folder);
        reports.ifPresent(each -> each.write(report));
        print(report, reports);
        boolean open = strict && report.review().leavesOpen();
        return report.review().failsPlan() || open ? Fallrule.FAILS : Fallrule.PASSES;
    }

    /** What changes a report beside the rule books and the plan. */
    private String options() {
        return String.join(
                "|",
                books.said(),
                new TreeSet<>(formats).toString(),
                paper.toString(),
                today.toString(),
                remedies.toString());
    }

    private RemedySearch search(Stack stack) {
        return remedies.orElse(stack.single() ? RemedySearch.each : RemedySearch.none);
    }

    private void print(Report report, Optional<ReportFolder> reports) {
        PrintWriter screen = spec.commandLine().getOut();
        if (quiet) {
            screen.println(Visible.of(report.site().id() + ": " + report.verdict()));
        } else {
            screen.print(TextReport.write(report, Terminal.ink()));
            screen.println();
            Wrapped.lines(report.verdict(), WIDTH).forEach(screen::println);
            String where = reports.map(place -> place.toRead(report.site()))
                    .orElse(
                            "With --out DIR the report is written too, to read and to print, with a map of each finding.");
            Wrapped.lines(where, WIDTH).forEach(screen::println);
        }
        screen.flush();
    }
}
