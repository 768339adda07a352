package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Unit;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Builds the ground from what was surveyed: spots, contours and breaklines, all with Z in metres. A triangle among the spots is a
 * piece of ground as it is drawn, and lies over what the rest gives. What cannot be used is left out and reported; where nothing
 * was surveyed there is no ground (see {@link SurveyReach}).
 */
public final class GroundBuilder {
    /** Metres; heights at one place that differ by less are the same but for rounding. */
    private static final double ROUNDING = 0.005;

    private final List<Fault> problems = new ArrayList<>();
    private final SurveyPoints points = new SurveyPoints();

    /**
     * The ground that was built.
     *
     * @param ground empty when fewer than three usable points were given, or all of them lie on one line
     * @param problems what was left out or doubtful
     */
    public record Result(Optional<GroundSurface> ground, List<Fault> problems) {}

    private GroundBuilder() {}

    /** Builds the ground from features with Z; spots are points, contours and breaklines lines. */
    public static Result build(List<Feature> spots, List<Feature> contours, List<Feature> breaklines) {
        return new GroundBuilder().result(spots, contours, breaklines);
    }

    private Result result(List<Feature> spots, List<Feature> contours, List<Feature> breaklines) {
        PlausibleHeights plausible = plausible(List.of(spots, contours, breaklines));
        List<Facet> drawn = new ArrayList<>();
        List<Feature> usable = DrawnFacets.takenFrom(usable(spots, plausible), drawn);
        List<Edge> ofContours = new ArrayList<>();
        List<Edge> all =
                new SurveyLines(usable(contours, plausible), usable(breaklines, plausible)).edges(points, ofContours);
        usable.forEach(spot -> List.of(spot.geometry().getCoordinates()).forEach(points::take));
        if (points.anyDisagreement(ROUNDING)) {
            usable.forEach(this::reportDisagreement);
        }
        Triangulation tin = LevelAreas.shaped(points.places(), all, ofContours);
        if (tin.looseLines() > 0) {
            problems.add(new Fault(
                    origin(contours, breaklines),
                    "has more separate lines than can be kept as edges of the ground; of the " + tin.looseLines()
                            + " shortest only the points were used; leave out lines far from the lot"));
        }
        SurveyReach reach = SurveyReach.of(tin, points.places().size());
        reach.leftOut().ifPresent(says -> problems.add(new Fault(origin(spots, contours, breaklines), says)));
        Optional<GroundSurface> surveyed = surface(reach.within());
        Optional<GroundSurface> over = surface(drawn);
        return new Result(PatchedGround.of(over, surveyed), List.copyOf(problems));
    }

    private static Optional<GroundSurface> surface(List<Facet> facets) {
        return facets.isEmpty() ? Optional.empty() : Optional.of(new TriangulatedGround(facets));
    }

    private static PlausibleHeights plausible(List<List<Feature>> layers) {
        PlausibleHeights plausible = new PlausibleHeights();
        for (List<Feature> layer : layers) {
            for (Feature feature : layer) {
                for (Coordinate place : feature.geometry().getCoordinates()) {
                    plausible.take(place.getZ());
                }
            }
        }
        return plausible;
    }

    private List<Feature> usable(List<Feature> features, PlausibleHeights plausible) {
        return features.stream().filter(feature -> isUsable(feature, plausible)).toList();
    }

    private boolean isUsable(Feature feature, PlausibleHeights plausible) {
        Geometry geometry = feature.geometry();
        for (Coordinate place : geometry.getCoordinates()) {
            double z = place.getZ();
            if (!Double.isFinite(z)) {
                report(feature, "has no elevation and is left out of the ground; give it one");
                return false;
            }
            if (!plausible.holds(z)) {
                report(
                        feature,
                        String.format(
                                Locale.ROOT,
                                "has the elevation %s m (%s ft), which seems to stand for none, and is left out of the ground;"
                                        + " give its elevation or remove it",
                                shown(z),
                                shown(z / Unit.FOOT.toSi())));
                return false;
            }
        }
        return !geometry.isEmpty();
    }

    private void reportDisagreement(Feature spot) {
        Coordinate place = spot.geometry().getCoordinate();
        double metres = points.disagreement(place);
        if (metres > ROUNDING) {
            report(
                    spot,
                    String.format(
                            Locale.ROOT,
                            "heights at its place differ by %s m (%s ft); their mean was taken; keep the right one",
                            shown(metres),
                            shown(metres / Unit.FOOT.toSi())));
        }
    }

    private static String shown(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }

    private void report(Feature feature, String says) {
        Place origin = feature.origin();
        problems.add(new Fault(origin.feature().isEmpty() ? origin.feature(feature.spoken()) : origin, says));
    }

    @SafeVarargs
    private static Place origin(List<Feature>... layers) {
        for (List<Feature> layer : layers) {
            if (!layer.isEmpty()) {
                return Place.of(layer.get(0).origin().file());
            }
        }
        return Place.of("ground");
    }
}
