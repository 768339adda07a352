package org.fallrule.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fallrule.docket.DocketRun;
import org.fallrule.document.Fault;
import org.fallrule.report.Visible;
import org.fallrule.report.docket.Docket;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.Need;
import picocli.CommandLine;

/** What is printed of many sites: a line for each in their order, the causes of those that could not be checked, a summary. */
final class SiteLines implements DocketRun.Watcher {
    private static final int MOST_NOTICES = 20;

    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean quiet;
    private final ProgressLine progress;

    SiteLines(CommandLine line, boolean quiet) {
        this.out = line.getOut();
        this.err = line.getErr();
        this.quiet = quiet;
        this.progress = new ProgressLine(err, Terminal.redraws() && !quiet, System::nanoTime);
    }

    /** What is to be known before the first site. */
    void notices(List<Fault> notices) {
        notices.stream().limit(MOST_NOTICES).forEach(notice -> err.println(Visible.of(notice.toString())));
        if (notices.size() > MOST_NOTICES) {
            err.println("and " + (notices.size() - MOST_NOTICES) + " more folders like these");
        }
        err.flush();
    }

    @Override
    public void done(DocketEntry entry) {
        progress.clear();
        if (entry.isBroken()) {
            err.println(Visible.of(entry.path() + " could not be checked:"));
            entry.causes().forEach(cause -> err.println("  " + Visible.of(cause)));
            err.flush();
        } else {
            out.println(Visible.of(entry.folder() + ": " + entry.verdict()));
            out.flush();
        }
    }

    @Override
    public void underWay(DocketRun.Progress now) {
        progress.show(now);
    }

    /** What the sites need, all together. */
    void summary(Docket docket, int resumed) {
        progress.clear();
        if (quiet) {
            return;
        }
        Map<Need, Long> needs = docket.needs();
        out.println();
        out.println(docket.entries().size() + " sites: "
                + needs.entrySet().stream()
                        .filter(each -> each.getValue() > 0)
                        .map(each -> each.getKey().spoken() + " " + each.getValue())
                        .collect(Collectors.joining(", "))
                + ".");
        docket.mostFailing().stream()
                .limit(3)
                .forEach(rule -> out.println(Visible.of("  fails in " + rule.plans(org.fallrule.finding.Outcome.FAILS)
                        + " of " + rule.all() + ": " + rule.rule())));
        out.flush();
        if (resumed > 0) {
            err.println(resumed + " of the reports were taken over from an earlier run.");
            err.flush();
        }
    }

    /** Where nothing was written, how to have it written. */
    void notWritten() {
        if (!quiet) {
            out.println("With --out DIR each report is written too, and an index of what needs you first.");
            out.flush();
        }
    }

    /** Where the index stands. */
    void written(String place) {
        if (!quiet) {
            out.println(Visible.of("Index written to " + place));
            out.flush();
        }
    }
}
