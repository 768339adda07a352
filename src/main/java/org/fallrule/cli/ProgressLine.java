package org.fallrule.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.fallrule.docket.DocketRun;

/** The line on a terminal that says how far a run is. It is written over as the run goes on, and nowhere else than on a terminal. */
final class ProgressLine {
    private static final long NANOS = 1_000_000_000L;
    private static final long SHOWN_EVERY = NANOS / 5;
    /** Carriage return, and erase to the end of the line (ECMA-48, EL). */
    private static final String ANEW = "\r\u001B[K";

    private final PrintWriter screen;
    private final boolean shown;
    private final LongSupplier clock;
    private final long start;
    private long last;
    private boolean standing;

    /**
     * @param shown whether there is a terminal to show it on
     * @param clock nanoseconds, as {@link System#nanoTime} counts them
     */
    ProgressLine(PrintWriter screen, boolean shown, LongSupplier clock) {
        this.screen = screen;
        this.shown = shown;
        this.clock = clock;
        this.start = clock.getAsLong();
        this.last = start - SHOWN_EVERY;
    }

    void show(DocketRun.Progress now) {
        long time = clock.getAsLong();
        if (shown && time - last >= SHOWN_EVERY) {
            last = time;
            screen.print(ANEW + words(now, time - start));
            screen.flush();
            standing = true;
        }
    }

    /** Takes the line away, so that something else can be printed. */
    void clear() {
        if (standing) {
            screen.print(ANEW);
            screen.flush();
            standing = false;
        }
    }

    private static String words(DocketRun.Progress now, long nanos) {
        StringBuilder words = new StringBuilder(
                String.format(Locale.ROOT, "%,d of %,d sites, %,d failing", now.done(), now.all(), now.failing()));
        if (now.broken() > 0) {
            words.append(String.format(Locale.ROOT, ", %,d not checked", now.broken()));
        }
        int checked = now.done() - now.resumed();
        if (checked > 0) {
            words.append(", ")
                    .append(span((double) nanos / checked * (now.all() - now.done()) / NANOS))
                    .append(" left");
        }
        return words.toString();
    }

    private static String span(double seconds) {
        if (seconds < 90) {
            return "about " + Math.max(1, Math.round(seconds)) + " s";
        }
        return seconds < 90 * 60
                ? "about " + Math.round(seconds / 60) + " min"
                : "about " + Math.round(seconds / 3600) + " h";
    }
}
