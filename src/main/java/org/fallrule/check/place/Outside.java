package org.fallrule.check.place;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.check.WorthTelling;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;

/** Whether features stay outside of areas, and how much of them lies inside. */
@AutoService(Check.class)
public final class Outside implements Check {
    static final Parameter<Selection> SUBJECT = Parameter.features(
            "subject",
            "what must stay outside",
            Role.PIPE,
            Role.INLET,
            Role.OUTFALL,
            Role.CLEANOUT,
            Role.UTILITY,
            Role.TREE,
            Role.WELL);
    static final Parameter<Selection> AREA = Parameter.features(
            "area",
            "the areas to stay outside of",
            Role.LOT,
            Role.BUILDING,
            Role.WALK,
            Role.DRIVE,
            Role.STREET,
            Role.EASEMENT,
            Role.FLOOD_ZONE,
            Role.DRAINAGE_AREA,
            Role.SOIL,
            Role.SEPTIC,
            Role.WATER_BODY);
    static final Parameter<Limits> INSIDE = Parameter.limit(
                    "inside_at_most",
                    Bound.AT_MOST,
                    Dimension.LENGTH,
                    "how much may lie inside of each area: of a line its length, of a point how far it is from the edge")
            .always();

    @Override
    public String name() {
        return "outside";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "How much of each feature lies inside of each of the areas. The edge counts as outside.",
                "Of a pipe or other line the length of its centreline inside; of a point the distance to the nearest edge"
                        + " when it is inside, else zero. Where the survey states an accuracy, the areas are also taken"
                        + " narrower and wider by it: if that reaches across the limit, the answer is borderline.",
                "Plan geometry; no published source.",
                List.of(
                        "areas that the layer does not hold, such as easements that were never mapped",
                        "the width of a pipe: its centreline counts",
                        "areas drawn as lines or points",
                        "permits and consents that allow it"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(SUBJECT, AREA, INSIDE);
    }

    @Override
    public boolean looksAtHeights() {
        return false;
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(
                new Need.OfLayer(terms.get(SUBJECT).role()),
                new Need.OfLayer(terms.get(AREA).role()));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection subjects = terms.get(SUBJECT);
        List<Feature> areas = terms.get(AREA).candidates(analysis).stream()
                .filter(area -> area.geometry().getDimension() == 2)
                .toList();
        List<Observation> observations = new ArrayList<>();
        for (Feature subject : subjects.candidates(analysis)) {
            if (subjects.chooses(subject) == Truth.UNKNOWN) {
                observations.add(Observation.cannotTell(subject, subjects.lacking(subject)));
            } else {
                List<Observation> seen = areas.stream()
                        .flatMap(area -> observe(analysis, terms, subject, area).stream())
                        .toList();
                observations.addAll(WorthTelling.of(seen, Comparator.comparingDouble(Outside::apart)));
            }
        }
        return observations;
    }

    private static double apart(Observation seen) {
        Geometry subject = seen.subject().orElseThrow().geometry();
        return seen.other().orElseThrow().geometry().distance(subject);
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, Terms terms, Feature subject, Feature area) {
        double accuracy = Accuracy.ofDistance(analysis, subject, area).metres();
        Inside inside = Inside.of(analysis.zones(), subject.geometry(), area.geometry(), accuracy);
        Optional<Observation> seen = terms.get(INSIDE)
                .hold(
                        subject,
                        subject.attributes(),
                        asked -> Observation.measured(
                                subject, asked.against(inside.of(), inside.length(), inside.accuracy())))
                .map(each -> each.against(area).at(inside.where()));
        return seen.map(each -> terms.get(AREA).settled(each, area));
    }
}
