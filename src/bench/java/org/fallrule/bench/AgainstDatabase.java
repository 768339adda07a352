package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.reader.SiteReader;
import org.fallrule.site.Site;

/**
 * Puts the same questions about plan distances to Fallrule and to PostGIS in one run over one made-up stack, holds the answers
 * against each other, and shows the ratio of times. Run by {@code src/bench/postgis/compare}.
 */
final class AgainstDatabase {
    private static final int ROUNDS = 5;
    private static final double WITHIN = Length.feet(10).metres();
    private static final double SETBACK = Length.feet(5).metres();

    /** Metres by which two answers may differ: a site's place in the common plane takes digits. */
    private static final double SAME = 1e-6;

    private final SpatialDatabase database;
    private final List<Site> sites = new ArrayList<>();

    private AgainstDatabase(SpatialDatabase database) {
        this.database = database;
    }

    /**
     * Compares.
     *
     * @param args a folder for files, and how many sites
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Path.of(args[0]);
        List<Path> stack = MadeStack.write(
                folder.resolve("stack"), Integer.parseInt(args[1]), 1, MadeStack.SEED, List.of(MadeFormat.GEOJSON));
        new AgainstDatabase(new SpatialDatabase(folder.resolve("rows"))).run(stack);
    }

    private void run(List<Path> stack) throws IOException, InterruptedException {
        double reading = 0;
        for (int round = 0; round < 2; round++) {
            sites.clear();
            long start = System.nanoTime();
            stack.forEach(site -> sites.add(SiteReader.read(site)));
            reading = (System.nanoTime() - start) / 1e9;
        }
        double loading = database.load(sites);
        Times setback = asked("setback", PlanQuestions::setback, database::setback, SETBACK);
        Times separation = asked(
                "separation",
                all -> PlanQuestions.separation(all, WITHIN),
                () -> database.separation(WITHIN),
                WITHIN / 2);
        double ours = setback.ours + separation.ours;
        double theirs = setback.theirs + separation.theirs;
        System.out.printf(
                Locale.ROOT,
                "both questions: %.1f times; with reading the files here and loading and indexing prepared rows there: %.1f"
                        + " times%n",
                theirs / ours,
                (theirs + loading) / (ours + reading));
    }

    /** Seconds, the least of the rounds. */
    private record Times(double ours, double theirs) {}

    /** A question put to the database, giving the seconds it took. */
    private interface Query {
        double ask() throws IOException, InterruptedException;
    }

    /** Asks both in turn, and holds every distance and how it stands to a limit against the other's. */
    private Times asked(String what, Function<List<Site>, List<PlanQuestions.Answer>> here, Query there, double limit)
            throws IOException, InterruptedException {
        double ours = Double.POSITIVE_INFINITY;
        double theirs = Double.POSITIVE_INFINITY;
        List<PlanQuestions.Answer> answers = List.of();
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            answers = here.apply(sites);
            ours = Math.min(ours, (System.nanoTime() - start) / 1e9);
            theirs = Math.min(theirs, there.ask());
        }
        double farthest = compare(answers, database.answers(what), limit);
        System.out.printf(
                Locale.ROOT,
                "%s: %d answers, equal to %.1e m, all alike against %.3f m; %.1f times as many in the same time%n",
                what,
                answers.size(),
                farthest,
                limit,
                theirs / ours);
        return new Times(ours, theirs);
    }

    private static double compare(List<PlanQuestions.Answer> here, List<String> there, double limit) {
        Map<String, Double> others = new HashMap<>();
        for (String line : there) {
            int last = line.lastIndexOf(',');
            others.put(line.substring(0, last), Double.parseDouble(line.substring(last + 1)));
        }
        double farthest = 0;
        for (PlanQuestions.Answer answer : here) {
            Double other = others.remove(answer.key());
            if (other == null || Math.abs(other - answer.metres()) > SAME) {
                throw new IllegalStateException(answer + " is " + other + " in the database");
            }
            if (meets(answer.metres(), limit) != meets(other, limit)) {
                throw new IllegalStateException(answer + " stands otherwise against " + limit);
            }
            farthest = Math.max(farthest, Math.abs(other - answer.metres()));
        }
        if (!others.isEmpty()) {
            throw new IllegalStateException("only the database has " + others.keySet());
        }
        return farthest;
    }

    private static boolean meets(double metres, double limit) {
        return metres >= limit - Dimension.LENGTH.tolerance();
    }
}
