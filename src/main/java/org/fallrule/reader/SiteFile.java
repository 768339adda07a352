package org.fallrule.reader;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.site.Role;
import org.fallrule.site.Survey;
import org.fallrule.site.Waiver;

/**
 * What a site's site.yaml says, or what its files' names say where it has none.
 *
 * @param name the name to show
 * @param county the county
 * @param house the firm's rule book
 * @param crs the coordinate reference system of layers that do not say
 * @param datum the vertical datum
 * @param units the units of bare numbers, by the name of an attribute or {@code elevation}
 * @param survey how it was measured
 * @param absent the roles that the lot has none of, and where that is stated
 * @param layers the layers
 * @param waivers what has been excused
 * @param storm the rain that the site states for itself
 * @param profile the profile of layers that it names
 */
record SiteFile(
        Optional<String> name,
        Optional<Node.Scalar> county,
        Optional<Node.Scalar> house,
        Optional<Node.Scalar> crs,
        Optional<String> datum,
        Map<String, Unit> units,
        Survey survey,
        Map<Role, Place> absent,
        List<LayerSpec> layers,
        List<Waiver> waivers,
        Storm storm,
        Optional<Node.Scalar> profile) {
    private static final String HEIGHTS = "elevation";

    /** The same with what is said for it where it says nothing, and with these roles absent. */
    SiteFile with(Optional<Node.Scalar> elseCounty, Optional<Node.Scalar> elseHouse, Map<Role, Place> newAbsent) {
        return new SiteFile(
                name,
                county.or(() -> elseCounty),
                house.or(() -> elseHouse),
                crs,
                datum,
                units,
                survey,
                newAbsent,
                layers,
                waivers,
                storm,
                profile);
    }

    /** Whether its heights are in metres; where it does not say so of all of them, whether those of the drain are. */
    boolean isMetric() {
        if (units.containsKey(HEIGHTS)) {
            return units.get(HEIGHTS) == Unit.ELEVATION_METRE;
        }
        List<Unit> ofDrain = layers.stream()
                .filter(layer -> layer.role().isOfDrain())
                .flatMap(layer -> layer.units().values().stream())
                .filter(unit -> unit.dimension() == Dimension.ELEVATION)
                .toList();
        return !ofDrain.isEmpty() && ofDrain.stream().allMatch(unit -> unit == Unit.ELEVATION_METRE);
    }

    /** What a folder without a site.yaml says. */
    static SiteFile silent() {
        return new SiteFile(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Survey.UNKNOWN,
                Map.of(),
                List.of(),
                List.of(),
                Storm.UNSAID,
                Optional.empty());
    }

    /** The same with other layers. */
    SiteFile with(List<LayerSpec> others) {
        return new SiteFile(name, county, house, crs, datum, units, survey, absent, others, waivers, storm, profile);
    }
}
