package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.locality.MarkAccuracy;
import org.fallrule.measure.Length;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * How well a distance or height between features is known, and from what.
 *
 * <p>A feature is known as well as its own column says. Else, what the drain only proposes has the place that the design gives
 * it; what was measured is known as well as the survey says; and a utility no better than its quality level after ASCE 38-22
 * allows, by the table of the rule book, however well its paint was surveyed. Independent errors add in squares
 * (JCGM 100:2008, 5.1.2).
 *
 * @param metres half-width of the interval that the true value lies in; zero when exact, or when nothing says
 * @param grounds what that rests on
 */
public record Accuracy(double metres, List<Ground> grounds) {

    public Accuracy {
        grounds = List.copyOf(grounds);
    }

    /**
     * How well one feature is known.
     *
     * @param metres half-width in metres
     * @param byQuality whether its quality level alone says so
     * @param says the same as a clause
     */
    public record Ground(double metres, boolean byQuality, String says) {}

    /** Which way a place is off. */
    private enum Way {
        PLAN("in plan", Attribute.HORIZONTAL_ACCURACY),
        HEIGHT("in height", Attribute.VERTICAL_ACCURACY);

        private final String words;

        @SuppressWarnings("ImmutableEnumChecker") // attributes are constants
        private final Attribute<Length> column;

        Way(String words, Attribute<Length> column) {
            this.words = words;
            this.column = column;
        }

        Optional<Length> of(SiteAnalysis analysis) {
            return this == PLAN
                    ? analysis.site().survey().horizontalAccuracy()
                    : analysis.site().survey().verticalAccuracy();
        }

        Optional<Written> of(MarkAccuracy.Known known) {
            return this == PLAN ? known.horizontal() : known.vertical();
        }
    }

    /** Of a plan distance between two features. */
    public static Accuracy ofDistance(SiteAnalysis analysis, Feature one, Feature other) {
        return of(List.of(ground(analysis, one, Way.PLAN), ground(analysis, other, Way.PLAN)));
    }

    /** Of a height of one feature above another. */
    public static Accuracy ofHeight(SiteAnalysis analysis, Feature one, Feature other) {
        return of(List.of(ground(analysis, one, Way.HEIGHT), ground(analysis, other, Way.HEIGHT)));
    }

    /** Of a plan distance from a feature to a place on the surveyed ground. */
    public static Accuracy ofDistanceOnGround(SiteAnalysis analysis, Feature feature) {
        return of(List.of(ground(analysis, feature, Way.PLAN), surveyed(analysis, "the ground", Way.PLAN)));
    }

    /** Of a height of a feature above or below the surveyed ground. */
    public static Accuracy ofHeightAtGround(SiteAnalysis analysis, Feature feature) {
        return of(List.of(ground(analysis, feature, Way.HEIGHT), surveyed(analysis, "the ground", Way.HEIGHT)));
    }

    /** Of a feature's place in plan. */
    public static Accuracy inPlan(SiteAnalysis analysis, Feature feature) {
        return of(List.of(ground(analysis, feature, Way.PLAN)));
    }

    /** Whether the depth that the plan gives of a utility may be relied on: at some quality levels no depth may. */
    public static boolean isDepthRelied(SiteAnalysis analysis, Feature utility) {
        return utility.get(Attribute.VERTICAL_ACCURACY).isPresent()
                || mark(analysis, utility)
                        .map(known -> known.vertical().isPresent())
                        .orElse(true);
    }

    private static Accuracy of(List<Optional<Ground>> parts) {
        List<Ground> grounds = parts.stream().flatMap(Optional::stream).toList();
        double squares =
                grounds.stream().mapToDouble(each -> each.metres * each.metres).sum();
        return new Accuracy(Math.sqrt(squares), grounds);
    }

    /** What to say beside a value: always how far a quality level is trusted, the rest where it matters. */
    public List<String> notes(boolean matters) {
        List<String> notes = new ArrayList<>();
        for (Ground ground : grounds) {
            if ((matters || ground.byQuality) && !notes.contains(ground.says)) {
                notes.add(ground.says);
            }
        }
        return notes;
    }

    private static Optional<Ground> ground(SiteAnalysis analysis, Feature feature, Way way) {
        Optional<Length> own = feature.get(way.column);
        if (own.isPresent()) {
            return Optional.of(new Ground(
                    own.get().metres(),
                    false,
                    says(analysis, feature.spoken(), own.get(), way) + " by " + way.column.name()));
        }
        if (feature.isDesigned()) {
            return Optional.empty();
        }
        Optional<Ground> survey = surveyed(analysis, feature.spoken(), way);
        Optional<Ground> quality = mark(analysis, feature)
                .flatMap(known -> way.of(known).map(figure -> byQuality(feature, known, figure, way)));
        boolean qualityIsWorse =
                quality.isPresent() && (survey.isEmpty() || quality.get().metres > survey.get().metres);
        return qualityIsWorse ? quality : survey;
    }

    private static Optional<MarkAccuracy.Known> mark(SiteAnalysis analysis, Feature feature) {
        return feature.role() == Role.UTILITY
                ? analysis.locality().markAccuracy().of(feature.get(Attribute.QUALITY))
                : Optional.empty();
    }

    private static Optional<Ground> surveyed(SiteAnalysis analysis, String what, Way way) {
        return way.of(analysis)
                .map(length ->
                        new Ground(length.metres(), false, says(analysis, what, length, way) + " by the survey"));
    }

    private static String says(SiteAnalysis analysis, String what, Length known, Way way) {
        return what + " is known to " + analysis.site().printed(known.metres()) + " " + way.words;
    }

    private static Ground byQuality(Feature utility, MarkAccuracy.Known known, Written figure, Way way) {
        String level = utility.get(Attribute.QUALITY)
                .map(quality -> "quality " + quality)
                .orElse("quality not given, so D");
        return new Ground(
                figure.quantity().si(),
                true,
                utility.spoken() + ": " + level + ", taken as known to " + figure.text() + " " + way.words + " by "
                        + known.basis() + " (" + known.statedAt().fileAndLine() + ")");
    }
}
