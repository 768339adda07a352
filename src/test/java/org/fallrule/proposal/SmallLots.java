package org.fallrule.proposal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Weight;
import org.fallrule.locality.Laying;
import org.fallrule.locality.Locality;
import org.fallrule.measure.Length;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Role;

/** Lots so small that every line on them can be tried. Feet; the ground is a plane or nearly one. */
final class SmallLots {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    private SmallLots() {}

    /** The binding rules of the invented county Saltmeadow, with lines on a coarse grid. */
    static RuleBook book(double gridInFeet) {
        RuleBook book = new RuleLibrary(Path.of("rules"), "rules").load("saltmeadow", Optional.empty(), TODAY);
        Locality place = book.locality();
        Map<Laying.Measure, Length> measures = new EnumMap<>(place.laying().measures());
        measures.put(Laying.Measure.GRID, Length.feet(gridInFeet));
        Laying laying = new Laying(
                place.laying().material(),
                place.laying().joint(),
                place.laying().sizes(),
                measures,
                place.laying().weights());
        List<Rule> binding = book.rules().stream()
                .filter(rule -> rule.weight() == Weight.MUST)
                .toList();
        return new RuleBook(
                book.books(),
                new Locality(
                        place.climate(),
                        place.storm(),
                        place.runoff(),
                        place.markAccuracy(),
                        place.expectedCover(),
                        laying),
                binding);
    }

    /** 48 ft wide, 64 ft deep, falling to the street by so many per cent, with one downspout near the rear. */
    static PlanInFeet falling(double percent) {
        double rear = 20 + 0.8 * percent;
        double front = 20 - 0.2 * percent;
        return PlanInFeet.plan()
                .with(Role.LOT, "own", "POLYGON ((0 0, 48 0, 48 64, 0 64, 0 0))", "own = true")
                .with(Role.STREET, "ST", "POLYGON ((-40 -30, 90 -30, 90 -8, -40 -8, -40 -30))")
                .with(Role.WALK, "W", "POLYGON ((-40 -6, 90 -6, 90 -2, -40 -2, -40 -6))", "access = public")
                .with(Role.INLET, "DS", "POINT (24 52)", "kind = downspout")
                .spots("-40 80 " + rear + ", 90 80 " + rear + ", -40 -20 " + front + ", 90 -20 " + front)
                .absent(Role.DRIVE)
                .absent(Role.WATER_BODY);
    }

    static PlanInFeet withShed(PlanInFeet plan) {
        return plan.with(Role.BUILDING, "SH", "POLYGON ((18 22, 34 22, 34 36, 18 36, 18 22))", "kind = shed");
    }

    static PlanInFeet withGas(PlanInFeet plan) {
        return plan.with(
                Role.UTILITY,
                "G",
                "LINESTRING (-20 28, 80 28)",
                "kind = gas",
                "depth = 30 in",
                "diameter = 1 in",
                "quality = A");
    }

    static SiteAnalysis analysis(PlanInFeet plan, RuleBook book) {
        return plan.in(book.locality()).analysis();
    }
}
