package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.analysis.LongSection;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.Stretch;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.FlowLines;
import org.fallrule.network.InvertLine;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;
import org.fallrule.site.Feature;

/**
 * The pipes of a drain in rows: invert, ground and cover at the ends, where the cover is least and greatest, and at crossings.
 */
final class DrainText {
    private static final int PIPE = 9;
    private static final int WHAT = 32;

    /** Covers that differ by less than this, in metres, look alike in rows: a hundredth of a foot. */
    private static final double ALIKE = 0.003048;

    private final SiteAnalysis analysis;
    private final SheetUnits units;
    private final List<String> lines = new ArrayList<>();

    private DrainText(SiteAnalysis analysis) {
        this.analysis = analysis;
        this.units = SheetUnits.of(analysis.site());
    }

    /** Lines of at most 80 columns; none where the plan has no pipes. */
    static List<String> lines(SiteAnalysis analysis) {
        DrainText text = new DrainText(analysis);
        if (!analysis.network().runs().isEmpty()) {
            text.row(
                    "pipe",
                    "station",
                    "invert",
                    "ground",
                    "cover",
                    "in " + text.units.word() + "; ? not known; x crosses");
            FlowLines.of(analysis.network()).forEach(line -> line.runs().forEach(text::pipe));
        }
        return text.lines;
    }

    private record At(double station, String what) {}

    private void pipe(PipeRun run) {
        double end = run.axis().getLength();
        Optional<PipeProfile> profile = PipeProfile.of(run);
        List<At> places = new ArrayList<>();
        places.add(new At(0, structure(run.up())));
        places.add(new At(end, structure(run.down())));
        profile.ifPresent(pipe -> extremes(run, pipe, end, places));
        UtilityCrossing.along(analysis, run)
                .forEach(crossing -> places.add(new At(crossing.station(), crossing(crossing))));
        places.sort(Comparator.comparingDouble(At::station));
        GroundAlong ground = new GroundAlong(analysis, run);
        for (At place : places) {
            Optional<Elevation> level = ground.at(place.station());
            Optional<Length> cover = profile.flatMap(pipe -> level.map(top -> top.above(pipe.topAt(place.station()))));
            row(
                    places.indexOf(place) == 0 ? run.id() : "",
                    units.station(place.station()),
                    height(invert(run, place.station(), end)),
                    height(level),
                    cover.map(units::number).orElse("?"),
                    place.what());
        }
    }

    /** Where the cover is least and greatest, if it differs there from the cover at either end. */
    private void extremes(PipeRun run, PipeProfile pipe, double end, List<At> places) {
        LongSection section = new LongSection(analysis, run, pipe);
        List<Stretch> pieces = section.pieces(pipe::topAt);
        List<Length> atEnds = Stream.of(0.0, end)
                .flatMap(station -> section.heightAt(station, pipe::topAt).stream())
                .toList();
        Comparator<Stretch.Spot> byHeight =
                Comparator.comparingDouble(spot -> spot.height().metres());
        Stream<Stretch.Spot> least = pieces.stream().flatMap(piece -> piece.least().stream());
        Stream<Stretch.Spot> greatest = pieces.stream().flatMap(piece -> piece.greatest().stream());
        least.min(byHeight)
                .filter(spot -> differs(spot, atEnds))
                .ifPresent(spot -> places.add(new At(spot.station(), "least cover")));
        greatest.max(byHeight)
                .filter(spot -> differs(spot, atEnds))
                .ifPresent(spot -> places.add(new At(spot.station(), "greatest cover")));
    }

    private static boolean differs(Stretch.Spot spot, List<Length> atEnds) {
        return atEnds.stream()
                .noneMatch(height -> Math.abs(height.metres() - spot.height().metres()) < ALIKE);
    }

    private static Optional<Elevation> invert(PipeRun run, double station, double end) {
        if (station == 0) {
            return run.invertUp();
        }
        return station == end ? run.invertDown() : InvertLine.of(run).map(line -> line.at(station));
    }

    private static String structure(Junction junction) {
        return junction.structures().stream().findFirst().map(Feature::spoken).orElse("joint");
    }

    private String crossing(UtilityCrossing crossing) {
        String top = crossing.top()
                .map(level -> (crossing.isTopRelied() ? " top " : " said top ") + height(Optional.of(level)))
                .orElse(" depth not known");
        return clipped("x " + crossing.utility().spoken(), WHAT - top.length()) + top;
    }

    private String height(Optional<Elevation> level) {
        return level.map(units::number).orElse("?");
    }

    private static String clipped(String words, int columns) {
        return Wrapped.lines(words, columns).get(0);
    }

    private void row(String pipe, String station, String invert, String ground, String cover, String what) {
        String name = clipped(pipe, PIPE);
        String row = String.format(
                Locale.ROOT,
                "  %s %8s %8s %8s %6s  %s",
                name + " ".repeat(PIPE - Wrapped.columns(name)),
                station,
                invert,
                ground,
                cover,
                clipped(what, WHAT));
        lines.add(row.stripTrailing());
    }
}
