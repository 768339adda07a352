package org.fallrule.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.fallrule.hydraulics.basin.DrainDown;
import org.fallrule.hydraulics.basin.Flotation;
import org.fallrule.hydraulics.basin.SumpDrainDown;
import org.fallrule.hydraulics.gradeline.DrainNode;
import org.fallrule.hydraulics.gradeline.DrainPipe;
import org.fallrule.hydraulics.gradeline.DrainTree;
import org.fallrule.hydraulics.gradeline.GradeLine;
import org.fallrule.hydraulics.gradeline.LocalLosses;
import org.fallrule.hydraulics.inlet.GrateHead;
import org.fallrule.hydraulics.inlet.SagGrate;
import org.fallrule.hydraulics.outlet.ApronByDischarge;
import org.fallrule.hydraulics.outlet.RiprapApron;
import org.fallrule.hydraulics.pipe.Roughness;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Area;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Volume;
import org.fallrule.measure.Written;

/** What is written in feet, inches and gallons and what is written in metres, millimetres and litres give the same. */
class UnitsPropertiesTest {
    private static final double SAME = 1e-9;

    @Property(tries = 100)
    void aGrateTakesInTheSame(
            @ForAll @DoubleRange(min = 0.5, max = 10) double feet,
            @ForAll @DoubleRange(min = 10, max = 500) double squareInches,
            @ForAll @DoubleRange(min = 1, max = 2000) double gpm) {
        Length perimeter = (Length) written(feet, Unit.FOOT);
        Length perimeterSi = (Length) written(feet * 304.8, Unit.MILLIMETRE);
        Area open = (Area) written(squareInches, Unit.SQUARE_INCH);
        Area openSi = (Area) written(squareInches * 0.00064516, Unit.SQUARE_METRE);

        same(
                depth(new SagGrate(perimeter, open), (Flow) written(gpm, Unit.GALLON_PER_MINUTE)),
                depth(new SagGrate(perimeterSi, openSi), litres(gpm)));
    }

    @Property(tries = 100)
    void anApronIsTheSame(
            @ForAll @DoubleRange(min = 3, max = 60) double inches,
            @ForAll @DoubleRange(min = 5, max = 400) double gpm) {
        Length bore = (Length) written(inches, Unit.INCH);
        Length boreSi = (Length) written(inches * 2.54, Unit.CENTIMETRE);
        Flow flow = (Flow) written(gpm, Unit.GALLON_PER_MINUTE);

        same(
                RiprapApron.stoneSize(bore, flow, new Length(0)),
                RiprapApron.stoneSize(boreSi, litres(gpm), new Length(0)));
        same(
                ApronByDischarge.length(bore, flow).value().orElseThrow(),
                ApronByDischarge.length(boreSi, litres(gpm)).value().orElseThrow());
    }

    @Property(tries = 100)
    void aSumpDrainsInTheSameTimeAndFloatsTheSame(
            @ForAll @DoubleRange(min = 1, max = 36) double inches,
            @ForAll @DoubleRange(min = 0.1, max = 20) double squareInches,
            @ForAll @DoubleRange(min = 0.01, max = 10) double inchesPerHour) {
        DrainDown us = SumpDrainDown.of(
                (Area) written(1, Unit.SQUARE_FOOT),
                (Length) written(inches, Unit.INCH),
                (Area) written(squareInches, Unit.SQUARE_INCH),
                0.6,
                (Area) written(4, Unit.SQUARE_FOOT),
                (Intensity) written(inchesPerHour, Unit.INCH_PER_HOUR));
        DrainDown si = SumpDrainDown.of(
                (Area) written(0.09290304, Unit.SQUARE_METRE),
                (Length) written(inches * 25.4, Unit.MILLIMETRE),
                (Area) written(squareInches * 0.00064516, Unit.SQUARE_METRE),
                0.6,
                (Area) written(4 * 0.09290304, Unit.SQUARE_METRE),
                (Intensity) written(inchesPerHour * 25.4, Unit.MILLIMETRE_PER_HOUR));

        same(((DrainDown.Empties) us).time(), ((DrainDown.Empties) si).time());
        assertThat(new Flotation(written(inches, Unit.POUND).si(), (Volume) written(inches, Unit.CUBIC_FOOT))
                        .lackingKg(1.2))
                .isCloseTo(
                        new Flotation(
                                        written(inches * 0.45359237, Unit.KILOGRAM)
                                                .si(),
                                        (Volume) written(inches * 28.316846592, Unit.LITRE))
                                .lackingKg(1.2),
                        within(SAME * inches * 100));
    }

    @Property(tries = 100)
    void theGradeLineStandsAsHigh(
            @ForAll @DoubleRange(min = 3, max = 24) double inches,
            @ForAll @DoubleRange(min = 10, max = 300) double feet,
            @ForAll @DoubleRange(min = 0, max = 0.05) double slope,
            @ForAll @DoubleRange(min = 1, max = 500) double gpm) {
        Elevation us = level(
                (Length) written(inches, Unit.INCH),
                (Length) written(feet, Unit.FOOT),
                (Elevation) written(100 + slope * feet, Unit.ELEVATION_FOOT),
                (Elevation) written(100, Unit.ELEVATION_FOOT),
                (Flow) written(gpm, Unit.GALLON_PER_MINUTE));
        Elevation si = level(
                (Length) written(inches * 25.4, Unit.MILLIMETRE),
                (Length) written(feet * 0.3048, Unit.METRE),
                (Elevation) written((100 + slope * feet) * 0.3048, Unit.ELEVATION_METRE),
                (Elevation) written(30.48, Unit.ELEVATION_METRE),
                litres(gpm));

        same(us, si);
    }

    private static Elevation level(Length bore, Length length, Elevation up, Elevation down, Flow flow) {
        DrainPipe pipe = new DrainPipe(
                "P",
                "A",
                "OUT",
                new RoundPipe(bore, new Roughness(0.012)),
                length,
                up,
                down,
                LocalLosses.betweenBoxes(0.5));
        DrainTree tree = DrainTree.of(
                        List.of(
                                new DrainNode("A", Optional.empty(), flow),
                                new DrainNode("OUT", Optional.empty(), new Flow(0))),
                        List.of(pipe))
                .value()
                .orElseThrow();
        return GradeLine.of(tree, tree.flows(), Map.of())
                .node("A")
                .level()
                .value()
                .orElseThrow();
    }

    private static Length depth(SagGrate grate, Flow flow) {
        return ((GrateHead.Standing) grate.head(flow)).depth();
    }

    private static Flow litres(double gpm) {
        return (Flow) written(gpm * 3.785411784 / 60, Unit.LITRE_PER_SECOND);
    }

    private static Quantity written(double number, Unit unit) {
        return Written.of(number, unit).quantity();
    }

    private static void same(Quantity us, Quantity si) {
        assertThat(us.si()).isCloseTo(si.si(), within(SAME * Math.abs(si.si())));
    }
}
