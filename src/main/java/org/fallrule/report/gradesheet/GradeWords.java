package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Attribute;

/** Puts a grade sheet into words, the same on a terminal and on paper. */
public final class GradeWords {
    private static final String NOTHING = "?";

    private final GradeSheet sheet;
    private final SheetUnits units;

    public GradeWords(GradeSheet sheet) {
        this.sheet = sheet;
        this.units = sheet.settings().units();
    }

    public String title() {
        return "Grade sheet: " + sheet.site();
    }

    /** How the sheet is to be read, a sentence each. */
    public List<String> reading() {
        Settings settings = sheet.settings();
        List<String> reading = new ArrayList<>(List.of(
                "Heights and stations in " + units.symbol() + ", heights "
                        + sheet.datum()
                                .map(datum -> "in " + datum)
                                .orElse("in the plan's own datum, which it does not name")
                        + ". Stations run with the flow from each pipe's upstream end.",
                "A row every " + settings.every().text()
                        + " and at every structure, bend and crossing. Fall: to the next row. ? : the plan does not tell.",
                "Cut: from the ground to the bottom of the trench, which is the invert less the wall of the pipe less "
                        + settings.bedding().text() + " of bedding.",
                "The inverts decide. The level is a check between them."));
        reading.addAll(
                settings.byHand().spoken(units).stream().map(PlainText::of).toList());
        sheet.utilities().ifPresent(reading::add);
        return reading;
    }

    /** {@code Pipe P-1: inlet DS-1 to inlet CB-1}. */
    public String heading(PipeGrade pipe) {
        return "Pipe " + PlainText.clipped(pipe.run().id(), 30) + ": "
                + end(pipe.run().up()) + " to " + end(pipe.run().down());
    }

    private static String end(Junction junction) {
        return junction.structures().stream()
                .findFirst()
                .map(feature -> feature.role().spoken() + " " + PlainText.clipped(feature.id(), 30))
                .orElse("joint");
    }

    /** What holds for the whole pipe, a sentence each. */
    public List<String> facts(PipeGrade pipe) {
        PipeRun run = pipe.run();
        List<String> facts = new ArrayList<>();
        facts.add(size(run) + ", " + units.withUnit(run.length()) + " long, "
                + run.fall().map(this::fall).orElse("fall not known")
                + run.slope()
                        .map(slope -> ", " + Printed.of(slope, Unit.PERCENT))
                        .orElse("") + ".");
        run.slope()
                .ifPresent(slope -> facts.add(
                        (slope.ratio() < 0 ? "RISES along the flow: " : "Level: ") + units.level(slope) + "."));
        pipe.deepest()
                .ifPresent(row -> facts.add(
                        "Deepest cut " + row.cut().map(units::withUnit).orElse(NOTHING) + " at "
                                + units.station(row.station()) + "."));
        if (!pipe.reaches().isEmpty()) {
            facts.add("By hand: " + pipe.reaches().stream().map(this::reach).collect(Collectors.joining("; ")) + ".");
        }
        facts.addAll(pipe.missing().stream().map(PlainText::of).toList());
        return facts;
    }

    private String size(PipeRun run) {
        String size = run.diameter().map(units::size).orElse("size not given");
        return run.pipe()
                .get(Attribute.MATERIAL)
                .map(material -> size + " " + PlainText.clipped(material.replace('_', ' '), 24))
                .orElse(size);
    }

    private String fall(Length fall) {
        return fall.metres() < 0 ? "rises " + units.withUnit(fall.times(-1)) : "falls " + units.withUnit(fall);
    }

    private String reach(HandReach reach) {
        return units.station(reach.from()) + " to " + units.station(reach.to()) + " ("
                + PlainText.clipped(reach.utility().spoken(), 40) + ")";
    }

    /** The words over the columns. */
    public static List<String> columns() {
        return List.of("station", "ground", "invert", "cut", "fall", "dig", "at");
    }

    /** The cells of a row, as many as there are columns. */
    public List<String> cells(PipeGrade pipe, GradeRow row) {
        boolean last = row.equals(pipe.rows().get(pipe.rows().size() - 1));
        return List.of(
                units.station(row.station()),
                row.ground().map(units::number).orElse(NOTHING),
                row.invert().map(units::number).orElse(NOTHING),
                number(row.cut()),
                last ? "" : pipe.fallFrom(row, units).orElse(NOTHING),
                row.byHand() ? "hand" : "",
                row.at().stream().map(PlainText::of).collect(Collectors.joining("; ")));
    }

    private String number(Optional<Length> length) {
        return length.map(units::number).orElse(NOTHING);
    }
}
