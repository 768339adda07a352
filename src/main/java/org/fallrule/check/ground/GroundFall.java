package org.fallrule.check.ground;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Whether the ground falls away from buildings all around them. */
@AutoService(Check.class)
public final class GroundFall implements Check {
    static final Parameter<Selection> AROUND =
            Parameter.features("around", "the buildings that the ground must fall away from", Role.BUILDING);
    static final Parameter<Limits> FALL = Parameter.limit(
                    "fall_at_least",
                    Bound.AT_LEAST,
                    Dimension.LENGTH,
                    "least fall within the first stretch of ground; may depend on above (lawn, walk, drive, street), what"
                            + " covers most of that stretch")
            .always();
    static final Parameter<Quantity> OVER = Parameter.quantity(
                    "over", Dimension.LENGTH, "the first stretch of ground, from the wall straight outward")
            .within(Range.ABOVE_ZERO)
            .always();
    static final Parameter<Quantity> SPACING = Parameter.quantity(
                    "spacing", Dimension.LENGTH, "greatest distance along the wall from one sample to the next")
            .within(Range.from("1 in", Dimension.LENGTH))
            .always();
    static final Parameter<Quantity> SHORTEST = Parameter.quantity(
            "shortest",
            Dimension.LENGTH,
            "a wall that has less ground of its own than this before another wall is as near, or before the lot line, is"
                    + " left out; none when it is not given");
    static final Parameter<Quantity> BANK = Parameter.quantity(
            "bank_from",
            Dimension.LENGTH,
            "how far ground must stand above the foot of the wall to be a bank that holds water back; any rise when it is"
                    + " not given");

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "ground_fall";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The fall of the ground away from each building on the site's own lot, along lines square to its walls"
                        + " all around it: from the foot of the wall to the lowest ground within the first stretch and"
                        + " before a bank. The worst place is told, and the share of the wall that falls short.",
                "fall = ground at wall - lowest ground within reach; reach = over, or less where the lot line comes first or"
                        + " another wall is as near as the own one (half way between two buildings, the bisector of an"
                        + " inner corner), and then only fall_at_least x reach / over is asked: the same slope",
                "IRC R401.3: 6 in within the first 10 ft; 2 % where impervious surfaces lie there.",
                List.of(
                        "ground between spot elevations: without spots at the wall it is the yard that is measured",
                        "drains and swales that make up for a fall that lot lines or walls leave no room for",
                        "courtyards inside of a building",
                        "how high the ground stands against the wall"));
    }

    @Override
    public boolean looksAtDrain() {
        return false;
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AROUND, FALL, OVER, SPACING, SHORTEST, BANK);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.BUILDING), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection around = terms.get(AROUND);
        List<Observation> observations = new ArrayList<>();
        for (Feature building : around.candidates(analysis.site())) {
            if (isOfTheSite(analysis, building)) {
                observe(analysis, terms, building)
                        .map(seen -> around.settled(seen, building))
                        .ifPresent(observations::add);
            }
        }
        return observations;
    }

    /** Whether it stands on the site's own lot, as far as the plan says which that is. */
    private static boolean isOfTheSite(SiteAnalysis analysis, Feature building) {
        return analysis.site()
                .ownLot()
                .map(lot -> lot.geometry().intersects(building.geometry().getInteriorPoint()))
                .orElse(true);
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, Terms terms, Feature building) {
        List<FallHeld.Sampled> sampled = new ArrayList<>();
        double leftOut = 0;
        for (FallAround.Beside place : FallAround.of(analysis, terms, building)) {
            leftOut += place.isLeftOut() ? place.sample().wall() : 0;
            place.seen().map(seen -> new FallHeld.Sampled(place.sample(), seen)).ifPresent(sampled::add);
        }
        return together(building, sampled, leftOut);
    }

    /** One observation of the whole building: that of its worst place, with how much of the wall is like it. */
    private static Optional<Observation> together(Feature building, List<FallHeld.Sampled> sampled, double leftOut) {
        Optional<FallHeld.Sampled> worst = sampled.stream()
                .min(Comparator.comparing((FallHeld.Sampled each) -> each.seen().outcome())
                        .thenComparingDouble(FallHeld.Sampled::margin));
        double wall = leftOut
                + sampled.stream().mapToDouble(each -> each.sample().wall()).sum();
        if (worst.isEmpty()) {
            return leftOut == 0
                    ? Optional.empty()
                    : Optional.of(Observation.plain(Outcome.NOT_APPLICABLE, building)
                            .noting("every wall stands too near to another wall or to the lot line to tell"));
        }
        Observation seen = worst.get().seen();
        if (seen.outcome() == Outcome.CANNOT_TELL) {
            seen = unknown(building, sampled);
        }
        seen = noting(seen, share(sampled, Outcome.FAILS, wall), "of the wall falls short");
        seen = noting(seen, share(sampled, Outcome.BORDERLINE, wall), "of the wall is too near to the limit to tell");
        double unknown = share(sampled, Outcome.CANNOT_TELL, wall);
        seen = noting(seen, unknown, "of the wall cannot be told");
        return Optional.of(
                noting(seen, leftOut / wall, "of the wall stands too near to another wall or to the lot line to tell"));
    }

    /** Everything that the plan does not say beside a building of which what is known meets the rule. */
    private static Observation unknown(Feature building, List<FallHeld.Sampled> sampled) {
        List<FallHeld.Sampled> open = sampled.stream()
                .filter(each -> each.seen().outcome() == Outcome.CANNOT_TELL)
                .toList();
        Geometry where = GEOMETRY.buildGeometry(
                open.stream().map(each -> each.sample().line()).toList());
        return open.stream()
                .flatMap(each -> each.seen().missing().stream())
                .distinct()
                .reduce(
                        Observation.plain(Outcome.CANNOT_TELL, building).at(where),
                        Observation::lacking,
                        (one, other) -> one);
    }

    private static double share(List<FallHeld.Sampled> sampled, Outcome outcome, double wall) {
        return sampled.stream()
                        .filter(each -> each.seen().outcome() == outcome)
                        .mapToDouble(each -> each.sample().wall())
                        .sum()
                / wall;
    }

    private static Observation noting(Observation seen, double share, String what) {
        return share == 0 ? seen : seen.noting(Math.max(1, Math.round(share * 100)) + " % " + what);
    }
}
