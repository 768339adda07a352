package org.fallrule.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fallrule.docket.DocketRun;
import org.fallrule.docket.Filing;
import org.fallrule.docket.PlanReview;
import org.fallrule.docket.RunDigest;
import org.fallrule.docket.SiteTask;
import org.fallrule.docket.Stack;
import org.fallrule.docket.Unfinished;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.docket.Docket;
import org.fallrule.report.docket.DocketEntry;

/** Checks many sites: a line for each, their reports and an index where there is a place for them, the worst exit code. */
final class ManySites {
    private final Stack stack;
    private final PlanReview review;
    private final Optional<ReportFolder> reports;
    private final SiteLines lines;
    private final boolean strict;
    private final int jobs;

    ManySites(
            Stack stack, PlanReview review, Optional<ReportFolder> reports, SiteLines lines, boolean strict, int jobs) {
        this.stack = stack;
        this.review = review;
        this.reports = reports;
        this.lines = lines;
        this.strict = strict;
        this.jobs = jobs;
    }

    int check(boolean resume, RunDigest digest, LocalDate day) {
        if (resume && reports.isEmpty()) {
            throw new UnusableInput(Place.of("--resume"), "wants the folder of the earlier run; name it with --out");
        }
        lines.notices(stack.notices());
        return reports.map(place -> filed(place, resume, digest, day)).orElseGet(() -> told(digest, day));
    }

    private int told(RunDigest digest, LocalDate day) {
        SiteTask task = new SiteTask(review, Optional.empty(), digest, false);
        int code = code(run(task, day));
        lines.notWritten();
        return code;
    }

    private int filed(ReportFolder place, boolean resume, RunDigest digest, LocalDate day) {
        try (Unfinished unfinished = Unfinished.in(place.folder())) {
            Filing filing = place.madeIn(unfinished.folder());
            SiteTask task = new SiteTask(review, Optional.of(filing), digest, resume);
            Docket docket = run(task, day);
            IndexFolder.write(docket, place.toRead(), place.folder(), unfinished.folder());
            lines.written(place.folder().resolve(IndexFolder.PAGE).toString());
            return code(docket);
        }
    }

    private Docket run(SiteTask task, LocalDate day) {
        List<DocketEntry> entries = new DocketRun(stack.sites(), task, jobs).run(lines);
        List<String> notices = stack.notices().stream().map(Fault::toString).toList();
        Docket docket = new Docket(entries, notices, day.toString());
        lines.summary(docket, task.resumed());
        return docket;
    }

    private int code(Docket docket) {
        return docket.entries().stream().mapToInt(this::code).max().orElse(Fallrule.PASSES);
    }

    private int code(DocketEntry entry) {
        if (entry.isBroken()) {
            return Fallrule.UNUSABLE;
        }
        return entry.binding() > 0 || (strict && entry.open() > 0) ? Fallrule.FAILS : Fallrule.PASSES;
    }
}
