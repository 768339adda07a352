package org.fallrule.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fallrule.analysis.PlanDistance;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Envelope;

/**
 * Two questions about plan distances, answered as the checks do, by {@link PlanDistance}: how far each outfall is from the nearest
 * public walk, the own lot's line and the nearest building; and which utilities come how near to which pipes, edge to edge.
 */
final class PlanQuestions {
    private PlanQuestions() {}

    /**
     * One distance.
     *
     * @param site the site's place in the list
     * @param of what it was measured to
     */
    record Answer(int site, String id, String of, double metres) {
        String key() {
            return site + "," + id + "," + of;
        }
    }

    static List<Answer> setback(List<Site> sites) {
        List<Answer> answers = new ArrayList<>();
        for (int number = 0; number < sites.size(); number++) {
            Site site = sites.get(number);
            List<Feature> walks = site.features(Role.WALK).stream()
                    .filter(walk -> walk.get(Attribute.ACCESS).orElse("").equals("public"))
                    .toList();
            for (Feature outfall : site.features(Role.OUTFALL)) {
                add(answers, number, outfall, "walk", nearest(outfall, walks));
                add(
                        answers,
                        number,
                        outfall,
                        "lot",
                        nearest(outfall, site.ownLot().stream().toList()));
                add(answers, number, outfall, "building", nearest(outfall, site.features(Role.BUILDING)));
            }
        }
        return answers;
    }

    private static void add(List<Answer> answers, int site, Feature subject, String of, OptionalDouble metres) {
        metres.ifPresent(found -> answers.add(new Answer(site, subject.id(), of, found)));
    }

    private static OptionalDouble nearest(Feature subject, List<Feature> others) {
        return others.stream()
                .mapToDouble(other -> PlanDistance.between(subject, other).gap().metres())
                .min();
    }

    /**
     * Pairs whose boxes lie farther apart are passed over, as the database passes them over by its index.
     *
     * @param within metres; what lies farther apart is not told
     */
    static List<Answer> separation(List<Site> sites, double within) {
        List<Answer> answers = new ArrayList<>();
        for (int number = 0; number < sites.size(); number++) {
            List<Feature> utilities = sites.get(number).features(Role.UTILITY);
            for (Feature pipe : sites.get(number).features(Role.PIPE)) {
                Envelope near = pipe.geometry().getEnvelopeInternal().copy();
                near.expandBy(within + radius(pipe));
                for (Feature utility : utilities) {
                    if (near.distance(utility.geometry().getEnvelopeInternal()) <= radius(utility)) {
                        double gap = PlanDistance.between(pipe, utility).gap().metres();
                        if (gap <= within) {
                            answers.add(new Answer(number, pipe.id(), utility.id(), gap));
                        }
                    }
                }
            }
        }
        return answers;
    }

    private static double radius(Feature feature) {
        return OutsideDiameter.of(feature).map(OutsideDiameter::radius).orElse(0.0);
    }
}
