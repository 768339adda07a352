package org.fallrule.remedy;

import java.util.List;
import java.util.Locale;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Station;
import org.fallrule.site.Feature;

/**
 * The steps that changes are tried in and the words that they are told in, in the units of the plan. Every step is a round number
 * of its unit, so that what is printed is what was proved.
 *
 * @param metric whether the plan is in metres
 */
record Shown(boolean metric) {
    private static final double INCH = Unit.INCH.toSi();
    private static final double FOOT = Unit.FOOT.toSi();
    private static final List<String> WINDS = List.of(
            "east",
            "east-north-east",
            "north-east",
            "north-north-east",
            "north",
            "north-north-west",
            "north-west",
            "west-north-west",
            "west",
            "west-south-west",
            "south-west",
            "south-south-west",
            "south",
            "south-south-east",
            "south-east",
            "east-south-east");

    /** The directions in plan that a thing is moved in. */
    static final int DIRECTIONS = WINDS.size();

    /** A step in height: 0.01 ft, or 5 mm. */
    double heightStep() {
        return metric ? 0.005 : 0.01 * FOOT;
    }

    /** A step along a pipe: 0.1 ft, or 5 cm. */
    double stationStep() {
        return metric ? 0.05 : 0.1 * FOOT;
    }

    /** A step aside: half a foot, or 10 cm. */
    double asideStep() {
        return metric ? 0.1 : 0.5 * FOOT;
    }

    /** A step of what is measured in inches: half an inch, or 1 cm. */
    double inchStep() {
        return metric ? 0.01 : 0.5 * INCH;
    }

    String height(double metres) {
        return metric ? Printed.of(new Length(metres), Unit.METRE) : Printed.of(new Length(metres), Unit.FOOT);
    }

    String plan(double metres) {
        return height(metres);
    }

    String inches(double metres) {
        return metric
                ? Printed.of(new Length(metres), Unit.MILLIMETRE)
                : Printed.trimmed(Math.round(metres / INCH * 100) / 100.0) + " in";
    }

    static String slope(double ratio) {
        return Printed.of(new Slope(ratio), Unit.PERCENT);
    }

    /** A station as the whole report writes them, in the plan's unit. */
    String station(double metres) {
        return "station " + new Station(metres, metric);
    }

    /** The direction of one of {@link #DIRECTIONS}, counted against the clock from the east. */
    static String wind(int direction) {
        return WINDS.get(direction);
    }

    /** The word for the direction that comes nearest to one in plan. */
    static String wind(double east, double north) {
        int nearest = (int) Math.round(Math.atan2(north, east) / (2 * Math.PI) * DIRECTIONS);
        return WINDS.get(Math.floorMod(nearest, DIRECTIONS));
    }

    /** How a sentence names the upper end of a pipe: {@code inlet CB-2}, or the pipe where nothing stands there. */
    static String from(PipeRun run) {
        return structure(run.up(), "the upper end of " + run.pipe().spoken());
    }

    static String to(PipeRun run) {
        return structure(run.down(), "the lower end of " + run.pipe().spoken());
    }

    private static String structure(Junction junction, String otherwise) {
        return junction.structures().stream().map(Feature::spoken).findFirst().orElse(otherwise);
    }

    /** A finding as a clause: {@code pipe P-7: slope 0.53 %, at least 1/8 in/ft (1.042 %) asked}. */
    static String clause(Finding finding) {
        Observation seen = finding.observation();
        if (seen.told().isPresent()) {
            return seen.told().get();
        }
        String subject = seen.subject().map(Feature::spoken).orElse("the plan");
        String about =
                seen.other().map(other -> subject + " and " + other.spoken()).orElse(subject);
        if (finding.outcome() == Outcome.CANNOT_TELL && !seen.missing().isEmpty()) {
            return about + ": not known: " + seen.missing().get(0).what();
        }
        String measured = seen.measured()
                .map(Shown::measure)
                .orElse(finding.outcome().spoken() + " " + finding.title().toLowerCase(Locale.ROOT));
        String open = finding.outcome() == Outcome.BORDERLINE ? ", too near to tell" : "";
        return about + ": " + measured + open;
    }

    private static String measure(Measured measured) {
        Quantity value = measured.value();
        return measured.limit()
                .map(limit -> measured.of() + " " + Printed.beside(value, limit) + ", "
                        + limit.bound().words() + " " + Printed.limit(limit.value()) + " asked")
                .orElseGet(() -> measured.of() + " " + Printed.of(value, Unit.usual(value.dimension())));
    }
}
