package org.fallrule.report.gradesheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.data.CsvLine;

/** The grade sheet as a table (RFC 4180). A cell is empty where the plan does not tell; {@code missing} says what. */
public final class GradeSheetCsv {
    private GradeSheetCsv() {}

    public static String write(GradeSheet sheet) {
        SheetUnits units = sheet.settings().units();
        String unit = "_" + units.symbol();
        StringBuilder text = new StringBuilder(CsvLine.first(List.of(
                "site",
                "pipe",
                "station",
                "distance" + unit,
                "ground" + unit,
                "invert" + unit,
                "cut" + unit,
                "fall_to_next" + unit,
                "by_hand",
                "at",
                "missing")));
        for (PipeGrade pipe : sheet.pipes()) {
            pipe.rows().forEach(row -> text.append(CsvLine.of(cells(sheet, pipe, row, units))));
        }
        return text.toString();
    }

    private static List<String> cells(GradeSheet sheet, PipeGrade pipe, GradeRow row, SheetUnits units) {
        boolean last = row.equals(pipe.rows().get(pipe.rows().size() - 1));
        return List.of(
                sheet.id(),
                pipe.run().id(),
                units.station(row.station()),
                units.number(new Length(row.station())),
                row.ground().map(units::number).orElse(""),
                row.invert().map(units::number).orElse(""),
                number(row.cut(), units),
                pipe.fallFrom(row, units).orElse(""),
                row.byHand() ? "yes" : "no",
                String.join("; ", row.at()),
                missing(row, last));
    }

    private static String number(Optional<Length> length, SheetUnits units) {
        return length.map(units::number).orElse("");
    }

    private static String missing(GradeRow row, boolean last) {
        List<String> missing = new ArrayList<>();
        if (row.ground().isEmpty()) {
            missing.add("ground");
        }
        if (row.invert().isEmpty()) {
            missing.add("invert");
        }
        if (row.cut().isEmpty()) {
            missing.add("cut");
        }
        if (row.fall().isEmpty() && !last) {
            missing.add("fall");
        }
        return String.join("; ", missing);
    }
}
