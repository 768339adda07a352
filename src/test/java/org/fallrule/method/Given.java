package org.fallrule.method;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Mass;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Velocity;
import org.fallrule.measure.Volume;
import org.fallrule.measure.Written;

/** The inputs of a published figure, as quantities. */
public record Given(PublishedValue value) {

    public String what() {
        return value.what();
    }

    public boolean has(String key) {
        return value.inputs().containsKey(key);
    }

    public String text(String key) {
        return Objects.requireNonNull(value.inputs().get(key), () -> value.place() + " gives no " + key);
    }

    public Ratio ratio(String key) {
        return (Ratio) quantity(key, Dimension.RATIO);
    }

    public double number(String key) {
        return ratio(key).value();
    }

    public Length length(String key) {
        return (Length) quantity(key, Dimension.LENGTH);
    }

    public Slope slope(String key) {
        return (Slope) quantity(key, Dimension.SLOPE);
    }

    public Area area(String key) {
        return (Area) quantity(key, Dimension.AREA);
    }

    public Flow flow(String key) {
        return (Flow) quantity(key, Dimension.FLOW);
    }

    public Velocity velocity(String key) {
        return (Velocity) quantity(key, Dimension.VELOCITY);
    }

    public Intensity intensity(String key) {
        return (Intensity) quantity(key, Dimension.INTENSITY);
    }

    public Time time(String key) {
        return (Time) quantity(key, Dimension.TIME);
    }

    public Volume volume(String key) {
        return (Volume) quantity(key, Dimension.VOLUME);
    }

    public Mass mass(String key) {
        return (Mass) quantity(key, Dimension.MASS);
    }

    /** The parts of an input that lists several. */
    public List<String> list(String key) {
        return Arrays.asList(text(key).split(", "));
    }

    /** Our result in the unit of the published figure. */
    public double in(Quantity ours) {
        return ours.in(Unit.named(value.unit(), ours.dimension()).orElseThrow());
    }

    /** Our result in the unit of the published figure. */
    public double in(Answer<? extends Quantity> ours) {
        return in(ours.value().orElseThrow(() -> new AssertionError(value.place() + ": " + ours.why())));
    }

    private Quantity quantity(String key, Dimension dimension) {
        return Written.parse(text(key), dimension).quantity();
    }
}
