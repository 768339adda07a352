package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.percent;
import static org.fallrule.hydrology.Rains.runoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.hydrology.SheetFlow.Edition;
import org.fallrule.locality.IntensityTable;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.method.Answer;

/** What holds for every input: the unit does not matter, and more never brings less. */
class HydrologyPropertiesTest {
    private static final double SAME = 1e-9;

    @Property(tries = 200)
    void lengthsInFeetAndInMetresGiveTheSameTimes(
            @ForAll @DoubleRange(min = 1, max = 100) double feet,
            @ForAll @DoubleRange(min = 0.1, max = 30) double percent,
            @ForAll @DoubleRange(min = 0.02, max = 1) double share) {
        Length us = (Length) written(feet, Unit.FOOT);
        Length si = (Length) written(feet * 0.3048, Unit.METRE);
        Ratio ratio = new Ratio(share);
        Intensity inches = (Intensity) written(4, Unit.INCH_PER_HOUR);
        Intensity millimetres = (Intensity) written(101.6, Unit.MILLIMETRE_PER_HOUR);
        Length rain = (Length) written(3.6, Unit.INCH);
        Length rainSi = (Length) written(91.44, Unit.MILLIMETRE);

        same(Kirpich.time(us, percent(percent)), Kirpich.time(si, percent(percent)));
        same(Kerby.time(ratio, us, percent(percent)), Kerby.time(ratio, si, percent(percent)));
        same(FaaTime.time(ratio, us, percent(percent)), FaaTime.time(ratio, si, percent(percent)));
        same(
                KinematicWave.time(ratio, us, percent(percent), inches),
                KinematicWave.time(ratio, si, percent(percent), millimetres));
        same(
                SheetFlow.time(ratio, us, rain, percent(percent), Edition.TR_55_1986),
                SheetFlow.time(ratio, si, rainSi, percent(percent), Edition.TR_55_1986));
    }

    @Property(tries = 200)
    void aTableInMillimetresGivesTheSameIntensity(@ForAll @DoubleRange(min = 5, max = 60) double minutes) {
        IntensityTable metric = new IntensityTable(Rains.NORTH_CAROLINA_10_YR.rows().stream()
                .map(row -> new IntensityTable.Row(row.duration(), (Intensity)
                        written(row.intensity().in(Unit.INCH_PER_HOUR) * 25.4, Unit.MILLIMETRE_PER_HOUR)))
                .toList());
        double us = TableIntensity.of(Rains.NORTH_CAROLINA_10_YR, Rains.minutes(minutes))
                .value()
                .orElseThrow()
                .si();
        double si = TableIntensity.of(metric, Rains.minutes(minutes))
                .value()
                .orElseThrow()
                .si();
        assertThat(si / us).isCloseTo(1, within(SAME));
    }

    @Property(tries = 200)
    void aLongerRainIsNeverHarder(
            @ForAll @DoubleRange(min = 5, max = 60) double one, @ForAll @DoubleRange(min = 5, max = 60) double other) {
        double shorter = at(Math.min(one, other));
        double longer = at(Math.max(one, other));
        assertThat(longer).isLessThanOrEqualTo(shorter * (1 + SAME));
    }

    @Property(tries = 300)
    void moreAreaMoreRunoffOrMoreRainNeverLowersTheFlow(
            @ForAll @DoubleRange(min = 0.01, max = 1e5) double squareMetres,
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
            @ForAll @DoubleRange(min = 0.1, max = 15) double inches,
            @ForAll @DoubleRange(min = 1, max = 3) double more) {
        double flow = flow(coefficient, squareMetres, inches);
        assertThat(flow(coefficient, squareMetres * more, inches)).isGreaterThanOrEqualTo(flow);
        assertThat(flow(Math.min(1, coefficient * more), squareMetres, inches)).isGreaterThanOrEqualTo(flow);
        assertThat(flow(coefficient, squareMetres, inches * more)).isGreaterThanOrEqualTo(flow);
    }

    @Property(tries = 200)
    void aCompositeLiesBetweenItsParts(
            @ForAll @DoubleRange(min = 0, max = 1) double one,
            @ForAll @DoubleRange(min = 0, max = 1) double other,
            @ForAll @DoubleRange(min = 0.1, max = 1e4) double area) {
        double both = CompositeRunoff.of(List.of(
                        new CompositeRunoff.Part(new Area(area), new Ratio(one)),
                        new CompositeRunoff.Part(new Area(100), new Ratio(other))))
                .value()
                .orElseThrow()
                .coefficient()
                .value();
        assertThat(both).isBetween(Math.min(one, other) - SAME, Math.max(one, other) + SAME);
    }

    @Property(tries = 200)
    void allThatDrainsToAJunctionGoesOnFromIt(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int places) {
        Random random = new Random(seed);
        List<Catchment> drain = new ArrayList<>();
        Map<String, Double> coming = new HashMap<>();
        for (int i = 0; i < places; i++) {
            CompositeRunoff own = runoff(random.nextDouble(), new Area(random.nextDouble(1, 1e4)));
            coming.put("" + i, own.area().squareMetres() * own.coefficient().value());
            Optional<String> below = i == 0 ? Optional.empty() : Optional.of("" + random.nextInt(i));
            drain.add(new Catchment("" + i, Optional.of(own), Rains.minutes(5), below, Rains.minutes(0.1)));
        }
        for (int i = places - 1; i > 0; i--) {
            coming.merge(drain.get(i).downstream().orElseThrow(), coming.getOrDefault("" + i, 0.0), Double::sum);
        }
        Map<String, Answer<GatheredFlow>> flows = RationalFlows.of(drain, Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5))
                .value()
                .orElseThrow();

        assertThat(flows).hasSize(places).allSatisfy((id, flow) -> {
            CompositeRunoff all = flow.value().orElseThrow().runoff();
            double expected = coming.getOrDefault(id, Double.NaN);
            assertThat(all.area().squareMetres() * all.coefficient().value())
                    .isCloseTo(expected, within(SAME * expected));
        });
    }

    private static double at(double minutes) {
        return TableIntensity.of(Rains.NORTH_CAROLINA_10_YR, Rains.minutes(minutes))
                .value()
                .orElseThrow()
                .si();
    }

    private static double flow(double coefficient, double squareMetres, double inches) {
        return RationalMethod.flow(runoff(coefficient, new Area(squareMetres)), Rains.inchesPerHour(inches))
                .value()
                .orElseThrow()
                .cubicMetresPerSecond();
    }

    private static Quantity written(double number, Unit unit) {
        Dimension dimension = unit.dimension();
        return Written.parse(number + " " + unit.symbol(), dimension).quantity();
    }

    private static void same(Answer<Time> one, Answer<Time> other) {
        double seconds = one.value().orElseThrow().seconds();
        assertThat(other.value().orElseThrow().seconds()).isCloseTo(seconds, within(SAME * seconds));
    }
}
