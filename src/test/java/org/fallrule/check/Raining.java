package org.fallrule.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fallrule.document.Place;
import org.fallrule.filter.Filter;
import org.fallrule.locality.Climate;
import org.fallrule.locality.IntensityTable;
import org.fallrule.locality.Locality;
import org.fallrule.locality.Rainfall;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Runoff;
import org.fallrule.locality.RunoffCoefficient;
import org.fallrule.locality.Stated;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Time;
import org.fallrule.measure.Written;

/** Invented places in which it rains as hard for a day as for five minutes, so that flows can be reckoned by hand. */
public final class Raining {
    private static final Place HERE = Place.of("rain.yaml").at(3, 1);

    /** One cubic foot per second runs off 7,200 sq ft of hard ground: 7,200 sq ft x 6 in/h = 3,600 cu ft/h. */
    public static final Locality SIX_INCHES_AN_HOUR = at("6 in/h");

    private Raining() {}

    /** A rain of the same intensity from 5 minutes to a day; roofs and paving shed all of it, lawns a quarter. */
    public static Locality at(String intensity) {
        Locality unsaid = Locality.UNSAID;
        return new Locality(
                new Climate(Optional.empty(), Optional.empty(), Optional.of("sand")),
                storm(intensity),
                new Runoff(new TreeMap<>(Map.of(
                        "roof",
                        always(1),
                        "drive",
                        always(1),
                        "walk",
                        always(1),
                        "street",
                        always(1),
                        "lawn",
                        always(0.25)))),
                unsaid.markAccuracy(),
                unsaid.expectedCover());
    }

    private static Storm storm(String intensity) {
        Intensity same =
                (Intensity) Written.parse(intensity, Dimension.INTENSITY).quantity();
        Rainfall rain = new IntensityTable(
                List.of(new IntensityTable.Row(new Time(300), same), new IntensityTable.Row(new Time(86_400), same)));
        ReturnPeriod tenYears = new ReturnPeriod(10);
        return new Storm(
                Optional.of(stated(tenYears)),
                Optional.of(stated(new Time(300))),
                new TreeMap<>(Map.of(tenYears, stated(rain))));
    }

    private static RunoffCoefficient always(double coefficient) {
        return new RunoffCoefficient(
                List.of(new RunoffCoefficient.Case("", new Filter.Always(), stated(new Ratio(coefficient)))));
    }

    private static <T> Stated<T> stated(T value) {
        return new Stated<>(value, HERE, Optional.empty());
    }
}
