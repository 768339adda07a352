package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.measure.Unit;

/**
 * How far a survey reaches from its points. A triangulation bridges any hole, up to its convex hull; triangles with an edge
 * far longer than is usual between the survey's points are left out, at the rim and inside, so that nothing was surveyed is
 * not read as level ground. Far longer is four times the length that nine in ten edges do not pass; so a dense line of
 * points in a sparse survey does not make the sparse part a hole. Which edges count, {@link SurveyLinks} says. Nothing is left
 * out of a survey of few points, which has no usual length.
 *
 * @param within the triangles that the survey reaches
 * @param leftOut what to say of those that were left out
 */
record SurveyReach(List<Facet> within, Optional<String> leftOut) {
    private static final int FEW = 20;
    private static final double USUAL_SHARE = 0.9;
    private static final double FAR_LONGER = 4;

    static SurveyReach of(Triangulation tin, int surveyedPoints) {
        if (surveyedPoints < FEW) {
            return new SurveyReach(tin.facets(), Optional.empty());
        }
        SurveyLinks links = new SurveyLinks(tin);
        double limit = FAR_LONGER * links.length(USUAL_SHARE);
        List<Facet> within = new ArrayList<>(tin.count());
        double area = 0;
        for (int i = 0; i < tin.count(); i++) {
            if (links.longestOf(i) > limit) {
                area += tin.facet(i).planArea();
            } else {
                within.add(tin.facet(i));
            }
        }
        return new SurveyReach(within, area > 0 ? Optional.of(sentence(area, limit)) : Optional.empty());
    }

    private static String sentence(double squareMetres, double limit) {
        return String.format(
                Locale.ROOT,
                "%.0f sq ft (%.0f m2) between points more than %.0f ft (%.0f m) apart are taken as not surveyed, as the"
                        + " survey's points lie far closer elsewhere; give heights there if the ground matters",
                Math.ceil(squareMetres / Unit.SQUARE_FOOT.toSi()),
                Math.ceil(squareMetres),
                limit / Unit.FOOT.toSi(),
                limit);
    }
}
