package org.fallrule.report.profile;

import java.util.List;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.network.FlowLine;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.PlainText;

/**
 * The figures of a pipe of a line, as printed.
 *
 * @param from station in metres where it begins
 * @param to station in metres where it ends
 * @param stations the two as printed
 * @param id its name
 * @param size nominal diameter
 * @param length plan length
 * @param fall how much it falls or rises
 * @param slope slope in percent
 */
public record PipeFacts(
        double from, double to, String stations, String id, String size, String length, String fall, String slope) {
    private static final int NAME_LENGTH = 18;

    static PipeFacts of(FlowLine.Leg leg, SheetUnits units) {
        PipeRun run = leg.run();
        return new PipeFacts(
                leg.start(),
                leg.end(),
                units.station(leg.start()) + " to " + units.station(leg.end()),
                PlainText.clipped(run.id(), NAME_LENGTH),
                run.diameter().map(units::size).orElse("size ?"),
                units.withUnit(run.length()),
                run.fall().map(fall -> fall(fall, units)).orElse("fall ?"),
                run.slope().map(slope -> Printed.of(slope, Unit.PERCENT)).orElse("slope ?"));
    }

    private static String fall(Length fall, SheetUnits units) {
        return fall.metres() < 0 ? "rises " + units.withUnit(fall.times(-1)) : "falls " + units.withUnit(fall);
    }

    /** For a cell under the pipe, one line each. */
    List<String> cell() {
        return List.of(id, size, length, slope, fall);
    }

    /** The whole in one line. */
    public String sentence() {
        return id + ", " + stations + ": " + size + ", " + length + " long, " + fall + ", " + slope + ".";
    }
}
