package org.fallrule.site;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;

/**
 * A lot-drainage plan.
 *
 * @param id the site folder's name
 * @param name the name to show
 * @param county the county whose rules are meant, if the plan says
 * @param house the house rule book, if the plan says
 * @param crs the coordinate system that the plan was drawn in, for the report
 * @param datum the vertical datum, if the plan says
 * @param frame where the local frame lies
 * @param survey how it was measured
 * @param layers what the plan says of each role
 * @param waivers what has been excused
 * @param problems what was wrong with the input without making it unusable
 * @param storm the rain that the plan states for itself
 * @param metric whether the plan's heights are in metres, so that its drawings go by metric scales
 */
public record Site(
        String id,
        String name,
        Optional<String> county,
        Optional<String> house,
        String crs,
        Optional<String> datum,
        Frame frame,
        Survey survey,
        Map<Role, Layer> layers,
        List<Waiver> waivers,
        List<Fault> problems,
        Storm storm,
        boolean metric) {

    private static final Layer NOT_SUPPLIED = new Layer.NotSupplied();

    public Site {
        layers = layers.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(layers));
        waivers = List.copyOf(waivers);
        problems = List.copyOf(problems);
    }

    /** A plan that states no rain of its own, its heights in feet. */
    public Site(
            String id,
            String name,
            Optional<String> county,
            Optional<String> house,
            String crs,
            Optional<String> datum,
            Frame frame,
            Survey survey,
            Map<Role, Layer> layers,
            List<Waiver> waivers,
            List<Fault> problems) {
        this(id, name, county, house, crs, datum, frame, survey, layers, waivers, problems, Storm.UNSAID, false);
    }

    /** The same plan with other layers. */
    public Site with(Map<Role, Layer> others) {
        return new Site(id, name, county, house, crs, datum, frame, survey, others, waivers, problems, storm, metric);
    }

    /** The same plan, in which no feature of a role has an attribute any more. */
    public Site without(Role role, Attribute<?> attribute) {
        Map<Role, Layer> others = new EnumMap<>(Role.class);
        others.putAll(layers);
        List<Feature> features = features(role).stream()
                .map(feature -> feature.with(feature.attributes().without(each -> each.equals(attribute))))
                .toList();
        others.put(role, new Layer.Supplied(features, List.of()));
        return with(others);
    }

    public Layer layer(Role role) {
        return layers.getOrDefault(role, NOT_SUPPLIED);
    }

    /** What counts; of the drain without what is abandoned. */
    public List<Feature> features(Role role) {
        return layer(role).features();
    }

    /** What the layer holds, abandoned parts of the drain among it. */
    public List<Feature> drawn(Role role) {
        Layer layer = layer(role);
        return layer.abandoned().isEmpty()
                ? layer.features()
                : Stream.concat(layer.features().stream(), layer.abandoned().stream())
                        .toList();
    }

    /** The unit that the plan reads in, where one in feet, inches and the like reads in the given one. */
    public Unit unit(Unit customary) {
        return metric ? customary.metric() : customary;
    }

    /** A quantity as it is printed of this plan. */
    public String printed(Quantity quantity, Unit customary) {
        return Printed.of(quantity, unit(customary));
    }

    /** A length in feet, or on a metric plan in metres, whole ones without digits. */
    public String printed(double metres) {
        return Printed.whole(metres, unit(Unit.FOOT));
    }

    /** The size that a pipe is called by: {@code 4 in}, or on a metric plan {@code 102 mm}. */
    public String nominal(Length diameter) {
        Unit unit = unit(Unit.INCH);
        return Math.round(diameter.in(unit)) + " " + unit.symbol();
    }

    /** The site's own lot: the one marked own, or the only one there is, unless it is marked as not own. */
    public Optional<Feature> ownLot() {
        List<Feature> lots = features(Role.LOT);
        List<Feature> own = lots.stream()
                .filter(lot -> lot.get(Attribute.OWN).orElse(false))
                .toList();
        if (own.size() == 1) {
            return Optional.of(own.get(0));
        }
        boolean onlyOne = lots.size() == 1 && lots.get(0).get(Attribute.OWN).isEmpty();
        return onlyOne ? Optional.of(lots.get(0)) : Optional.empty();
    }
}
