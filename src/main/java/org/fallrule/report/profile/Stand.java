package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Elevation;
import org.fallrule.network.FlowLine;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * Where pipes of a line meet or end, with the structure that stands there.
 *
 * @param station metres along the line
 * @param name the structures' names, or what the place is
 * @param rim top of the grate or lid
 * @param ground the ground there
 * @param levels the inverts that are known there
 * @param lines what is written at it, one line each: rim and inverts
 */
public record Stand(
        double station,
        String name,
        Optional<Elevation> rim,
        Optional<Elevation> ground,
        List<Elevation> levels,
        List<String> lines) {
    private static final int NAME_LENGTH = 12;

    /** The places along a line, the uppermost first. */
    static List<Stand> along(SiteAnalysis analysis, FlowLine line) {
        List<Stand> stands = new ArrayList<>();
        List<FlowLine.Leg> legs = line.legs();
        for (int i = 0; i < legs.size(); i++) {
            Optional<PipeRun> above =
                    i == 0 ? Optional.empty() : Optional.of(line.runs().get(i - 1));
            stands.add(of(
                    analysis,
                    legs.get(i).run().up(),
                    legs.get(i).start(),
                    above,
                    Optional.of(legs.get(i).run())));
        }
        FlowLine.Leg last = legs.get(legs.size() - 1);
        stands.add(of(analysis, line.to(), last.end(), Optional.of(last.run()), line.into()));
        return stands;
    }

    private static Stand of(
            SiteAnalysis analysis, Junction place, double station, Optional<PipeRun> in, Optional<PipeRun> out) {
        Optional<Elevation> rim = place.structures().stream()
                .flatMap(each -> each.get(Attribute.RIM).stream())
                .findFirst();
        Optional<Elevation> ground = analysis.ground().flatMap(surface -> surface.elevationAt(place.place()));
        List<PipeRun> branches = analysis.network().into(place).stream()
                .filter(run -> !in.filter(run::equals).isPresent())
                .toList();
        List<Elevation> levels = Stream.of(in.flatMap(PipeRun::invertDown), out.flatMap(PipeRun::invertUp))
                .flatMap(Optional::stream)
                .toList();
        SheetUnits units = SheetUnits.of(analysis.site());
        return new Stand(station, name(place), rim, ground, levels, lines(units, place, rim, in, out, branches));
    }

    private static String name(Junction place) {
        if (place.structures().isEmpty()) {
            return "joint";
        }
        return place.structures().stream()
                .map(Feature::id)
                .map(id -> PlainText.clipped(id, NAME_LENGTH))
                .collect(Collectors.joining(", "));
    }

    private static List<String> lines(
            SheetUnits units,
            Junction place,
            Optional<Elevation> rim,
            Optional<PipeRun> in,
            Optional<PipeRun> out,
            List<PipeRun> branches) {
        List<String> lines = new ArrayList<>();
        boolean wantsRim = place.structure(Role.INLET).isPresent()
                || place.structure(Role.CLEANOUT).isPresent();
        rim.ifPresentOrElse(level -> lines.add("rim " + units.number(level)), () -> {
            if (wantsRim) {
                lines.add("rim ?");
            }
        });
        String word = place.isOutfall() ? "invert " : "in ";
        in.ifPresent(run -> lines.add(word + shown(run.invertDown(), units)));
        for (PipeRun branch : branches) {
            lines.add("in " + shown(branch.invertDown(), units) + " " + PlainText.clipped(branch.id(), 6));
        }
        out.ifPresent(run -> lines.add("out " + shown(run.invertUp(), units)));
        return lines;
    }

    private static String shown(Optional<Elevation> level, SheetUnits units) {
        return level.map(units::number).orElse("?");
    }
}
