package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.InvertLine;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;

/**
 * A pipe on a grade sheet.
 *
 * @param run the pipe
 * @param rows its rows, the uppermost first
 * @param reaches where its trench is dug by hand
 * @param missing what the plan does not say, each a sentence
 */
public record PipeGrade(PipeRun run, List<GradeRow> rows, List<HandReach> reaches, List<String> missing) {
    public PipeGrade {
        rows = List.copyOf(rows);
        reaches = List.copyOf(reaches);
        missing = List.copyOf(missing);
    }

    static PipeGrade of(SiteAnalysis analysis, PipeRun run, Settings settings) {
        List<HandReach> reaches = HandReach.along(analysis, run, settings.byHand());
        List<UtilityCrossing> crossings = UtilityCrossing.along(analysis, run);
        GradePlaces places = new GradePlaces(run, Settings.length(settings.every()), settings.units());
        places.crossings(crossings);
        places.byHand(reaches);
        GroundAlong ground = new GroundAlong(analysis, run);
        List<GradeRow> rows = new ArrayList<>();
        List<Map.Entry<Double, List<String>>> all = List.copyOf(places.all().entrySet());
        for (int i = 0; i < all.size(); i++) {
            double station = all.get(i).getKey();
            Optional<Elevation> invert = invertAt(run, station);
            Optional<Elevation> next =
                    i + 1 < all.size() ? invertAt(run, all.get(i + 1).getKey()) : Optional.empty();
            rows.add(new GradeRow(
                    station,
                    ground.at(station),
                    invert,
                    cut(run, ground.at(station), station, Settings.length(settings.bedding())),
                    invert.flatMap(here -> next.map(here::above)),
                    reaches.stream().anyMatch(reach -> reach.holds(station)),
                    all.get(i).getValue()));
        }
        return new PipeGrade(run, rows, reaches, missing(run, rows, crossings, settings));
    }

    /** Between its ends a pipe's invert is known only when both are. */
    private static Optional<Elevation> invertAt(PipeRun run, double station) {
        Optional<InvertLine> line = InvertLine.of(run);
        if (line.isPresent()) {
            return Optional.of(line.get().at(station));
        }
        if (station == 0) {
            return run.invertUp();
        }
        return station == run.axis().getLength() ? run.invertDown() : Optional.empty();
    }

    private static Optional<Length> cut(PipeRun run, Optional<Elevation> ground, double station, Length bedding) {
        return PipeProfile.of(run)
                .map(pipe -> pipe.bottomAt(station).minus(bedding))
                .flatMap(bottom -> ground.map(level -> level.above(bottom)));
    }

    /** The fall from a row to the next as printed; nothing at the last row or where an invert is not known. */
    public Optional<String> fallFrom(GradeRow row, SheetUnits units) {
        int next = rows.indexOf(row) + 1;
        return next >= rows.size()
                ? Optional.empty()
                : row.invert().flatMap(here -> rows.get(next).invert().map(there -> units.fall(here, there)));
    }

    /** The row with the deepest cut, when a cut is known anywhere. */
    public Optional<GradeRow> deepest() {
        return rows.stream()
                .filter(row -> row.cut().isPresent())
                .max(Comparator.comparingDouble(row -> row.cut().orElseThrow().metres()));
    }

    private static List<String> missing(
            PipeRun run, List<GradeRow> rows, List<UtilityCrossing> crossings, Settings settings) {
        List<String> missing = new ArrayList<>();
        if (run.invertUp().isEmpty()) {
            missing.add("Invert at the upstream end is not given.");
        }
        if (run.invertDown().isEmpty()) {
            missing.add("Invert at the downstream end is not given.");
        }
        if (run.size().isEmpty()) {
            missing.add("Size is not given, so the cut is not told.");
        }
        run.size()
                .filter(size -> size.known() == OutsideDiameter.Source.NOMINAL)
                .ifPresent(size -> missing.add("Wall is not known and not counted: the cut is deeper by it."));
        long bare = rows.stream().filter(row -> row.ground().isEmpty()).count();
        if (bare > 0) {
            missing.add("Ground is not known at " + bare + " of " + rows.size() + " rows.");
        }
        crossings.stream()
                .flatMap(crossing -> settings.byHand().instead(crossing.utility(), settings.units()).stream())
                .distinct()
                .forEach(missing::add);
        return missing;
    }
}
