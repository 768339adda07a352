package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.Submittal;
import org.fallrule.docket.Causes;
import org.fallrule.docket.PlanReview;
import org.fallrule.docket.RemedySearch;
import org.fallrule.reader.ProfileFile;
import org.fallrule.reader.SharedLayers;
import org.fallrule.report.Report;
import org.fallrule.report.Visible;
import org.fallrule.report.comparison.TurnWords;
import org.fallrule.rulebook.RuleLibrary;

/** Checks a site anew whenever its files or the rule books change, until it is closed. No fault of a file ends it. */
final class SiteWatch implements AutoCloseable {
    /** What is written where nobody says: all that is read on a screen. Paper is for when the plan stands. */
    static final Set<ReportFormat> FORMATS = EnumSet.complementOf(EnumSet.of(ReportFormat.pdf));

    private static final int MOST_FAULTS = 5;
    /** How long a report that is being written may take to be finished when the watch is ended: 30 s. */
    private static final long LAST_REPORT = 30;

    private static final int REHEARSALS = 2;

    private final Path folder;
    private final BooksAtHand books;
    private final Optional<ReportFolder> reports;
    private final PrintWriter out;
    private final PrintWriter err;
    private final FolderWatch watch;
    private final CountDownLatch ended = new CountDownLatch(1);
    private Optional<Submittal> last = Optional.empty();

    SiteWatch(
            Path folder,
            BookOptions options,
            RuleLibrary library,
            LocalDate today,
            Optional<ReportFolder> reports,
            PrintWriter out,
            PrintWriter err) {
        this.folder = folder;
        this.books = new BooksAtHand(options, library, today);
        this.reports = reports.map(ReportFolder::watched);
        this.out = out;
        this.err = err;
        this.watch = new FolderWatch(() -> watched(folder.toAbsolutePath(), books.folder()));
    }

    /** What a report is made from: the site, its rule books, and as they are now the layers that it shares and its profile. */
    static List<Path> watched(Path site, Path rules) {
        List<Path> watched = new ArrayList<>(List.of(site, rules));
        Optional.ofNullable(site.getParent()).ifPresent(beside -> watched.addAll(SharedLayers.filesToCome(beside)));
        ProfileFile.of(site).ifPresent(watched::add);
        return watched;
    }

    /** Watches until closed, or until the program is told to end; a report that is being written is finished first. */
    int run() {
        Thread finish = new Thread(this::finish, "finish the report");
        Runtime.getRuntime().addShutdownHook(finish);
        try {
            say("Watching " + folder + "; Ctrl-C ends it."
                    + (reports.isPresent() ? "" : " With --out DIR each state is written as a report too."));
            int code = redraw(System.nanoTime());
            rehearse();
            while (watch.awaitChange()) {
                code = redraw(watch.noticed());
            }
            return code;
        } finally {
            ended.countDown();
            forget(finish);
        }
    }

    private void finish() {
        close();
        try {
            ended.await(LAST_REPORT, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void forget(Thread finish) {
        try {
            Runtime.getRuntime().removeShutdownHook(finish);
        } catch (IllegalStateException e) {
            // the program is ending already
            return;
        }
    }

    @Override
    public void close() {
        watch.close();
    }

    private int redraw(long since) {
        try {
            return redrawn(since);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            tell(Causes.of(e));
        }
        return Fallrule.UNUSABLE;
    }

    /**
     * Makes the report again and drops it, while nobody waits: the Java machine has compiled the program better then, so that the
     * first change is drawn as soon as later ones. What fails now is told at the next change.
     */
    private void rehearse() {
        try {
            for (int i = 0; i < REHEARSALS; i++) {
                Report report = reviewed();
                reports.ifPresent(each -> each.made(report));
                turn(submittal(report));
            }
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return;
        }
    }

    private Report reviewed() {
        return new PlanReview(books.asTheyStand(), RemedySearch.none).of(folder);
    }

    private static Submittal submittal(Report report) {
        return new Submittal(report.analysis(), report.book(), report.review());
    }

    /** What became of the last state. */
    private Optional<String> turn(Submittal now) {
        return last.map(before -> TurnWords.of(Comparison.of(before, now)));
    }

    private int redrawn(long since) {
        Report report = reviewed();
        reports.ifPresent(each -> each.write(report));
        Submittal now = submittal(report);
        String turn = turn(now)
                .or(() -> reports.map(each -> each.toRead(report.site())))
                .map(words -> " " + words)
                .orElse("");
        last = Optional.of(now);
        double seconds = (System.nanoTime() - since) / 1e9;
        say(clock() + "  " + report.verdict() + turn + String.format(Locale.ROOT, " (%.2f s)", seconds));
        return report.review().failsPlan() ? Fallrule.FAILS : Fallrule.PASSES;
    }

    private void tell(List<String> faults) {
        err.println(
                Visible.of(clock() + "  " + folder + " could not be checked; the last report stands, watching on:"));
        faults.stream().limit(MOST_FAULTS).forEach(fault -> err.println("  " + Visible.of(fault)));
        if (faults.size() > MOST_FAULTS) {
            err.println("  and " + (faults.size() - MOST_FAULTS) + " more");
        }
        err.flush();
    }

    private void say(String words) {
        out.println(Visible.of(words));
        out.flush();
    }

    private static String clock() {
        return LocalTime.now(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.SECONDS)
                .toString();
    }
}
