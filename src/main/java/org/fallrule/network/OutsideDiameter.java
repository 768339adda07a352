package org.fallrule.network;

import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/**
 * The outside diameter of a pipe or utility.
 *
 * @param value the diameter
 * @param known how it is known
 */
public record OutsideDiameter(Length value, Source known) {

    /** How an outside diameter is known. */
    public enum Source {
        /** The plan gives it. */
        STATED,
        /** The standard that the material names gives it for the nominal size. */
        STANDARD,
        /** Only the nominal size is known; the wall is not counted. */
        NOMINAL
    }

    public Length half() {
        return value.times(0.5);
    }

    /** Half of it in metres. */
    public double radius() {
        return half().metres();
    }

    /** What the plan allows to be known of a feature's outside diameter. */
    public static Optional<OutsideDiameter> of(Feature feature) {
        Optional<OutsideDiameter> stated =
                feature.get(Attribute.OUTSIDE_DIAMETER).map(length -> new OutsideDiameter(length, Source.STATED));
        return stated.or(() -> feature.get(Attribute.DIAMETER).map(nominal -> standard(feature, nominal)));
    }

    private static OutsideDiameter standard(Feature feature, Length nominal) {
        return feature.get(Attribute.MATERIAL)
                .flatMap(material -> StandardPipeSizes.outside(material, nominal))
                .map(length -> new OutsideDiameter(length, Source.STANDARD))
                .orElseGet(() -> new OutsideDiameter(nominal, Source.NOMINAL));
    }
}
