package org.fallrule.check.ground;

import java.util.List;
import java.util.Locale;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.terrain.flow.Pond;
import org.locationtech.jts.geom.Geometry;

/**
 * A hollow of the ground in which water stands.
 *
 * @param pond the water when it spills
 * @param water where it stands
 */
record Hollow(Pond pond, Geometry water) {

    /** The hollows deeper than so many metres. */
    static List<Hollow> deeperThan(double metres, SiteAnalysis analysis) {
        return analysis.flow().filled().stream()
                .flatMap(ground -> ground.ponds().stream())
                .filter(pond -> pond.depth().metres() > metres + Dimension.LENGTH.tolerance())
                .map(pond -> new Hollow(pond, pond.outline()))
                .toList();
    }

    Elevation lowest() {
        return new Elevation(pond.lowest().getZ());
    }

    /** {@code 4.3 in deep, over 120 sq ft, holding 21 cu ft}. */
    String spoken() {
        double cubicFeet = pond.cubicMetres() / Math.pow(Unit.FOOT.toSi(), 3);
        return Printed.of(pond.depth(), Unit.INCH) + " deep, over " + Printed.of(pond.area(), Unit.SQUARE_FOOT)
                + ", holding " + String.format(Locale.ROOT, cubicFeet < 10 ? "%.1f" : "%.0f", cubicFeet) + " cu ft";
    }
}
