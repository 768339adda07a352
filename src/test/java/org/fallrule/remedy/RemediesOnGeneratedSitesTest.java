package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every remedy offered, checked again by another way than it was found: the changed plan is written as a site folder, read, and
 * reviewed whole; there the finding meets, and none is worse. The comparison is this test's own. More sites with {@code
 * -Dfallrule.remedy.sites=2000}.
 */
class RemediesOnGeneratedSitesTest {
    private static final int SITES = Integer.getInteger("fallrule.remedy.sites", 60);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
    private static final RuleLibrary LIBRARY = new RuleLibrary(Path.of("rules"), "rules");

    private static final Path PROJECTION = Path.of("src/test/resources/org/fallrule/reader/raster/corner.prj");

    @TempDir
    Path place;

    private final Map<String, int[]> tally = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    @Test
    void aRemedyHoldsInTheWrittenPlan() {
        FailingSites sites = new FailingSites(20_261);
        for (int i = 0; i < SITES; i++) {
            check(sites.next(place, "lot-" + i).path());
            if ((i + 1) % 100 == 0) {
                tell(i + 1);
            }
        }

        assertThat(wrong).isEmpty();
        assertThat(tally.values().stream().mapToInt(counts -> counts[0]).sum()).isGreaterThan(SITES);
    }

    @Test
    void aRemedyOfASampleHoldsInTheWrittenPlan() {
        List.of("harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3")
                .forEach(sample -> check(Path.of("sample-sites", sample)));

        assertThat(wrong).isEmpty();
    }

    @Test
    void aRemedyHoldsOverARasterOfProposedGround() throws IOException {
        FailingSites sites = new FailingSites(20_262);
        for (int i = 0; i < 4; i++) {
            Path folder = sites.next(place, "graded-" + i).path();
            Files.writeString(folder.resolve("proposed_ground.asc"), grid(0.01 * (i + 1)));
            Files.copy(PROJECTION, folder.resolve("proposed_ground.prj"));
            check(folder);
        }

        assertThat(wrong).isEmpty();
        assertThat(tally.getOrDefault("ground_fall", new int[3])[0]).isPositive();
    }

    /** Ground of that slope to the south, at the cells of a grid of 5 ft around the lot. */
    private static String grid(double slope) {
        StringBuilder text = new StringBuilder("ncols 28\nnrows 36\nxllcorner 1449980\nyllcorner 549980\ncellsize 5\n");
        for (int row = 35; row >= 0; row--) {
            for (int column = 0; column < 28; column++) {
                text.append(String.format(Locale.ROOT, "%.3f ", 100 + (row * 5 - 17.5) * slope));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private void check(Path folder) {
        Site site = SiteReader.read(folder);
        RuleBook book = LIBRARY.load(site.county().orElse("larkmoor"), site.house());
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Review review = Reviewer.review(analysis, book, TODAY);
        Path same = place.resolve("same-" + folder.getFileName());
        SiteWriter.write(site, folder, same);
        Map<String, double[]> before = standing(review(same, book));
        for (Remedied remedied : Remedies.each(analysis, book, review, TODAY).each()) {
            tally.computeIfAbsent(remedied.finding().check(), any -> new int[3])[column(remedied.kind())]++;
            remedied.change().ifPresent(change -> {
                Path changed = place.resolve("changed-" + folder.getFileName());
                SiteWriter.write(change.site(), folder, changed);
                hold(folder, remedied, before, review(changed, book));
            });
        }
    }

    private static int column(Remedied.Kind kind) {
        return switch (kind) {
            case PROVED -> 0;
            case TRADE_OFF -> 1;
            case NONE -> 2;
        };
    }

    /** How far it is, by check: remedies proved, trade-offs, findings without a remedy; what was wrong so far. */
    private void tell(int sites) {
        StringBuilder text = new StringBuilder(sites + " sites, wrong " + wrong.size() + ";");
        tally.forEach((check, counts) -> text.append(' ')
                .append(check)
                .append(' ')
                .append(counts[0])
                .append('/')
                .append(counts[1])
                .append('/')
                .append(counts[2]));
        System.getLogger("remedies").log(System.Logger.Level.INFO, text.toString());
    }

    private static List<Finding> review(Path folder, RuleBook book) {
        return Reviewer.review(SiteAnalysis.of(SiteReader.read(folder), book.locality()), book, TODAY)
                .findings();
    }

    private void hold(Path folder, Remedied remedied, Map<String, double[]> before, List<Finding> after) {
        String told = folder.getFileName() + " " + key(remedied.finding()) + ": " + remedied.says();
        Map<String, double[]> now = standing(after);
        double[] turned = now.get(key(remedied.finding()));
        if (turned != null && turned[0] > 0) {
            wrong.add("does not meet: " + told);
        }
        now.forEach((subject, stands) -> {
            double[] was = before.getOrDefault(subject, new double[] {0, 0});
            boolean worse = stands[0] > was[0] || (stands[0] == was[0] && stands[0] > 0 && stands[1] > was[1] + 2e-3);
            if (worse) {
                wrong.add("makes worse " + subject + ": " + told);
            }
        });
    }

    /** How the findings stand by what they are about: how bad the outcome, and by how much the limit is missed. */
    private static Map<String, double[]> standing(List<Finding> findings) {
        Map<String, double[]> standing = new HashMap<>();
        for (Finding finding : findings) {
            if (finding.weight() == Weight.NOTE) {
                continue;
            }
            double shortfall = finding.observation()
                    .measured()
                    .flatMap(measured -> measured.limit().map(limit -> Math.max(0, limit.shortfall(measured.value()))))
                    .orElse(0.0);
            double[] stands = {bad(finding.outcome()), shortfall};
            standing.merge(key(finding), stands, (a, b) -> a[0] != b[0] ? (a[0] > b[0] ? a : b) : a[1] > b[1] ? a : b);
        }
        return standing;
    }

    private static int bad(Outcome outcome) {
        return outcome == Outcome.FAILS
                ? 3
                : outcome == Outcome.CANNOT_TELL ? 2 : outcome == Outcome.BORDERLINE ? 1 : 0;
    }

    private static String key(Finding finding) {
        return finding.rule() + "|"
                + finding.observation()
                        .subject()
                        .map(RemediesOnGeneratedSitesTest::whole)
                        .orElse("")
                + "|"
                + finding.observation()
                        .other()
                        .map(RemediesOnGeneratedSitesTest::whole)
                        .orElse("") + "|"
                + finding.observation()
                        .measured()
                        .map(measured -> measured.of())
                        .orElse("");
    }

    private static String whole(Feature feature) {
        return feature.id().replaceAll("(~\\d+)+$", "");
    }
}
