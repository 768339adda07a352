package org.fallrule.network;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.LineString;

/**
 * One pipe between two junctions, turned so that it runs toward its outfall.
 *
 * @param pipe the pipe as the plan gives it
 * @param axis its centreline in the direction of flow
 * @param up the junction it comes from
 * @param down the junction it goes to
 * @param size its outside diameter and how that is known; empty when neither it nor a nominal diameter is given
 * @param invertUp invert at its upstream end
 * @param invertDown invert at its downstream end
 */
public record PipeRun(
        Feature pipe,
        LineString axis,
        Junction up,
        Junction down,
        Optional<OutsideDiameter> size,
        Optional<Elevation> invertUp,
        Optional<Elevation> invertDown) {

    public String id() {
        return pipe.id();
    }

    /** Plan length of the centreline. */
    public Length length() {
        return new Length(axis.getLength());
    }

    public Optional<Length> diameter() {
        return pipe.get(Attribute.DIAMETER);
    }

    /** Whether the two are one pipe or end at the same junction. */
    public boolean joins(PipeRun other) {
        return up.number() == other.up.number()
                || up.number() == other.down.number()
                || down.number() == other.up.number()
                || down.number() == other.down.number();
    }

    /** Invert at the upstream end less invert at the downstream end; negative when the pipe runs uphill. */
    public Optional<Length> fall() {
        return invertUp.flatMap(from -> invertDown.map(from::above));
    }

    /** Fall over plan length; empty when an invert is missing or the pipe has no length in plan. */
    public Optional<Slope> slope() {
        return fall().filter(fall -> axis.getLength() > 0).map(fall -> new Slope(fall.metres() / axis.getLength()));
    }
}
