package org.fallrule.hydrology;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fallrule.document.Place;
import org.fallrule.locality.IntensityTable;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Stated;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Area;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;

/** Rain and quantities in the units that sources print. */
final class Rains {
    static final ReturnPeriod TEN_YEARS = new ReturnPeriod(10);

    /** The 10 year column of a point in North Carolina, NOAA Atlas 14 Vol. 2 v3, annual series. */
    static final IntensityTable NORTH_CAROLINA_10_YR = table(5, 7.14, 10, 5.71, 15, 4.81, 30, 3.49, 60, 2.27);

    private Rains() {}

    /** A table of minutes and inches per hour, by turns. */
    static IntensityTable table(double... numbers) {
        List<IntensityTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            rows.add(new IntensityTable.Row(
                    new Time(numbers[i] * Unit.MINUTE.toSi()),
                    new Intensity(numbers[i + 1] * Unit.INCH_PER_HOUR.toSi())));
        }
        return new IntensityTable(rows);
    }

    static DesignStorm storm(IntensityTable table, double shortestMinutes) {
        return DesignStorm.of(stormOf(table, shortestMinutes)).value().orElseThrow();
    }

    static Storm stormOf(IntensityTable table, double shortestMinutes) {
        return new Storm(
                Optional.of(stated(TEN_YEARS)),
                Optional.of(stated(minutes(shortestMinutes))),
                new TreeMap<>(Map.of(TEN_YEARS, stated(table))));
    }

    static <T> Stated<T> stated(T value) {
        return new Stated<>(value, Place.of("here"), Optional.empty());
    }

    static Time minutes(double minutes) {
        return new Time(minutes * Unit.MINUTE.toSi());
    }

    static Intensity inchesPerHour(double inches) {
        return new Intensity(inches * Unit.INCH_PER_HOUR.toSi());
    }

    static Area squareFeet(double feet) {
        return new Area(feet * Unit.SQUARE_FOOT.toSi());
    }

    static Area acres(double acres) {
        return new Area(acres * Unit.ACRE.toSi());
    }

    static Slope percent(double percent) {
        return new Slope(percent / 100);
    }

    static CompositeRunoff runoff(double coefficient, Area area) {
        return new CompositeRunoff(area, new Ratio(coefficient));
    }

    static double inMinutes(Answer<Time> time) {
        return time.value().orElseThrow().in(Unit.MINUTE);
    }

    static double inHours(Answer<Time> time) {
        return time.value().orElseThrow().in(Unit.HOUR);
    }

    static double inInchesPerHour(Answer<Intensity> intensity) {
        return intensity.value().orElseThrow().in(Unit.INCH_PER_HOUR);
    }
}
