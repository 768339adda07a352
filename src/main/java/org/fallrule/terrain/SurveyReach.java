package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * How far a survey reaches from its points. A triangulation bridges any hole, up to its convex hull; triangles with an edge
 * far longer than is usual between the survey's points are left out, at the rim and inside, so that nothing was surveyed is
 * not read as level ground. Far longer is four times the length that nine in ten edges do not pass; so a dense line of
 * points in a sparse survey does not make the sparse part a hole. Edges along given lines and between two points of one
 * level on lines do not count: they are as long as their line was drawn. Nothing is left out of a survey of few points,
 * which has no usual length.
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
        double limit = FAR_LONGER * usualLength(tin);
        List<Facet> within = new ArrayList<>();
        double area = 0;
        for (Facet facet : tin.facets()) {
            if (longestLink(facet, tin) > limit) {
                area += facet.planArea();
            } else {
                within.add(facet);
            }
        }
        return new SurveyReach(within, area > 0 ? Optional.of(sentence(area, limit)) : Optional.empty());
    }

    private static double usualLength(Triangulation tin) {
        Set<Edge> links = new HashSet<>();
        tin.facets().forEach(facet -> links.addAll(links(facet, tin)));
        double[] lengths = links.stream().mapToDouble(Edge::length).sorted().toArray();
        return lengths.length == 0 ? Double.POSITIVE_INFINITY : lengths[(int) (USUAL_SHARE * (lengths.length - 1))];
    }

    private static double longestLink(Facet facet, Triangulation tin) {
        return links(facet, tin).stream().mapToDouble(Edge::length).max().orElse(0);
    }

    private static List<Edge> links(Facet facet, Triangulation tin) {
        List<Edge> links = new ArrayList<>(3);
        for (Edge edge : List.of(
                new Edge(facet.a(), facet.b()), new Edge(facet.b(), facet.c()), new Edge(facet.c(), facet.a()))) {
            boolean isAlongLine = tin.fixed().contains(edge);
            boolean isAcrossBend = tin.fixedEnds().contains(edge.a())
                    && tin.fixedEnds().contains(edge.b())
                    && edge.a().getZ() == edge.b().getZ();
            if (!isAlongLine && !isAcrossBend) {
                links.add(edge);
            }
        }
        return links;
    }

    private static String sentence(double squareMetres, double limit) {
        return String.format(
                Locale.ROOT,
                "%.0f sq ft between points more than %.0f ft apart are taken as not surveyed, as the survey's points lie far"
                        + " closer elsewhere; give heights there if the ground matters",
                squareMetres / (0.3048 * 0.3048),
                limit / 0.3048);
    }
}
