package org.fallrule.check.ground;

import java.util.List;
import java.util.Locale;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.fallrule.site.Site;
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
    String spoken(Site plan) {
        Unit unit = plan.unit(Unit.CUBIC_FOOT);
        double volume = pond.cubicMetres() / unit.toSi();
        return plan.printed(pond.depth(), Unit.INCH) + " deep, over " + plan.printed(pond.area(), Unit.SQUARE_FOOT)
                + ", holding " + String.format(Locale.ROOT, volume < 10 ? "%.1f" : "%.0f", volume) + " "
                + unit.symbol();
    }
}
