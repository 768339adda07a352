package org.fallrule.docket;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.Need;
import org.fallrule.report.docket.RuleStanding;

/**
 * Checks the sites of a stack side by side. Entries come in the order of the stack whatever the order in which sites are done; no
 * more sites are under way or wait for a slower one than a few for each thread, and of a site that is done only its entry is
 * kept.
 */
public final class DocketRun {
    /** Sites for each thread that may be under way or wait to be told. */
    private static final int AHEAD = 8;

    private static final long GLANCE_MILLIS = 200;

    /** Follows a run; called from the thread that runs it. */
    public interface Watcher {
        /** The next site in the order of the stack is done. */
        void done(DocketEntry entry);

        /** How far the run is; called now and then. */
        void underWay(Progress progress);
    }

    /**
     * How far a run is.
     *
     * @param done the sites that are done
     * @param resumed how many of them were taken over from an earlier run
     * @param failing those of them in which a binding rule fails
     * @param broken those of them that could not be checked
     * @param all the sites of the run
     */
    public record Progress(int done, int resumed, int failing, int broken, int all) {}

    private final List<Submittal> sites;
    private final SiteTask task;
    private final int threads;
    private final Map<RuleStanding, RuleStanding> standings = new ConcurrentHashMap<>();
    private final AtomicInteger done = new AtomicInteger();
    private final AtomicInteger failing = new AtomicInteger();
    private final AtomicInteger broken = new AtomicInteger();

    /**
     * @param task what is done with each site
     * @param threads how many sites are checked at the same time, one or more
     */
    public DocketRun(List<Submittal> sites, SiteTask task, int threads) {
        this.sites = List.copyOf(sites);
        this.task = task;
        this.threads = threads;
    }

    /** Checks every site; the entries in the order of the stack. */
    public List<DocketEntry> run(Watcher watcher) {
        ExecutorService crew = Executors.newFixedThreadPool(threads);
        try {
            return run(watcher, crew);
        } finally {
            crew.shutdownNow();
        }
    }

    private List<DocketEntry> run(Watcher watcher, ExecutorService crew) {
        List<DocketEntry> entries = new ArrayList<>();
        Deque<Future<DocketEntry>> waiting = new ArrayDeque<>();
        Iterator<Submittal> next = sites.iterator();
        while (next.hasNext() || !waiting.isEmpty()) {
            while (next.hasNext() && waiting.size() < threads * AHEAD) {
                Submittal site = next.next();
                waiting.add(crew.submit(() -> entry(site)));
            }
            DocketEntry entry = first(waiting, watcher);
            entries.add(entry);
            watcher.done(entry);
            watcher.underWay(progress());
        }
        return entries;
    }

    private DocketEntry first(Deque<Future<DocketEntry>> waiting, Watcher watcher) {
        Future<DocketEntry> first = waiting.remove();
        while (true) {
            try {
                return first.get(GLANCE_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                watcher.underWay(progress());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted", e);
            } catch (ExecutionException e) {
                throw new IllegalStateException(e.getCause());
            }
        }
    }

    private Progress progress() {
        return new Progress(done.get(), task.resumed(), failing.get(), broken.get(), sites.size());
    }

    private DocketEntry entry(Submittal site) {
        DocketEntry entry = thin(task.entry(site));
        failing.addAndGet(entry.need() == Need.BINDING_FAILS ? 1 : 0);
        broken.addAndGet(entry.isBroken() ? 1 : 0);
        done.incrementAndGet();
        return entry;
    }

    /** The entry with its standings shared with those entries that have the same. */
    private DocketEntry thin(DocketEntry entry) {
        return new DocketEntry(
                entry.path(),
                entry.folder(),
                entry.name(),
                entry.county(),
                entry.verdict(),
                entry.counts(),
                entry.standings().stream()
                        .map(each -> standings.computeIfAbsent(each, same -> same))
                        .toList(),
                entry.lot(),
                entry.causes());
    }
}
