package org.fallrule.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Place;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.locality.Locality;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.site.Survey;
import org.fallrule.site.Waiver;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** An invented plan, written as well-known text in feet, and what a check observes in it. Immutable. */
public final class PlanInFeet {
    private static final Place HERE = Place.of("rule.yaml");

    private final Map<Role, Layer> layers;
    private final Survey survey;
    private final List<Waiver> waivers;
    private final Locality locality;

    private PlanInFeet(Map<Role, Layer> layers, Survey survey, List<Waiver> waivers, Locality locality) {
        this.layers = layers;
        this.survey = survey;
        this.waivers = waivers;
        this.locality = locality;
    }

    public static PlanInFeet plan() {
        return new PlanInFeet(Map.of(), Survey.UNKNOWN, List.of(), Locality.UNSAID);
    }

    /** The plan with one feature more; its Z in feet, its attributes as {@code diameter = 4 in} or {@code own = true}. */
    public PlanInFeet with(Role role, String id, String wkt, String... attributes) {
        Place origin = Place.of(role.word() + ".geojson").feature(id);
        List<Feature> features = new ArrayList<>(site().drawn(role));
        features.add(new Feature(role, id, moved(geometry(wkt), PlanInFeet::inMetres), attributes(attributes), origin));
        return with(role, new Layer.Supplied(features, List.of(origin.file())));
    }

    /** The plan without one of its features. */
    public PlanInFeet without(Role role, String id) {
        List<Feature> left = site().features(role).stream()
                .filter(feature -> !feature.id().equals(id))
                .toList();
        return with(role, new Layer.Supplied(left, List.of(role.word() + ".geojson")));
    }

    /** The plan with spot elevations: {@code x y z, x y z}. */
    public PlanInFeet spots(String places) {
        PlanInFeet plan = this;
        for (String place : places.split(",", -1)) {
            int number = plan.site().features(Role.SPOT).size() + 1;
            plan = plan.with(Role.SPOT, "S-" + number, "POINT Z (" + place + ")");
        }
        return plan;
    }

    /** The plan with a layer in which there is nothing. */
    public PlanInFeet empty(Role role) {
        return with(role, new Layer.Supplied(List.of(), List.of(role.word() + ".geojson")));
    }

    /** The plan with the statement that there is nothing of a role. */
    public PlanInFeet absent(Role role) {
        return with(role, new Layer.StatedAbsent(Place.of("site.yaml").at(7, 1)));
    }

    /** The plan as surveyed to within so many feet in plan and in height. */
    public PlanInFeet surveyedTo(double plan, double height) {
        Survey within = new Survey(
                Optional.empty(), Optional.empty(), Optional.of(Length.feet(plan)), Optional.of(Length.feet(height)));
        return new PlanInFeet(layers, within, waivers, locality);
    }

    /** The plan in a place of which rule books say this. */
    public PlanInFeet in(Locality place) {
        return new PlanInFeet(layers, survey, waivers, place);
    }

    public PlanInFeet waived(Waiver... more) {
        return new PlanInFeet(layers, survey, List.of(more), locality);
    }

    /** The plan with every place moved; places are in metres. */
    public PlanInFeet moved(Function<Coordinate, Coordinate> move) {
        return reshaped(geometry -> moved(geometry, move));
    }

    /** The plan with every geometry made anew; geometries are in metres. */
    public PlanInFeet reshaped(Function<Geometry, Geometry> shape) {
        Map<Role, Layer> reshaped = new EnumMap<>(Role.class);
        layers.forEach(
                (role, layer) -> reshaped.put(role, layer instanceof Layer.Supplied ? reshaped(layer, shape) : layer));
        return new PlanInFeet(reshaped, survey, waivers, locality);
    }

    private static Layer reshaped(Layer layer, Function<Geometry, Geometry> shape) {
        List<Feature> features = layer.features().stream()
                .map(f -> new Feature(f.role(), f.id(), shape.apply(f.geometry()), f.attributes(), f.origin()))
                .toList();
        return new Layer.Supplied(features, List.of());
    }

    public Site site() {
        return new Site(
                "plan",
                "Plan (invented)",
                Optional.empty(),
                Optional.empty(),
                "local",
                Optional.empty(),
                local -> local,
                survey,
                layers,
                waivers,
                List.of());
    }

    public SiteAnalysis analysis() {
        return SiteAnalysis.of(site(), locality);
    }

    /** What a check observes under terms written as in a rule book, one term to a line: see {@link #terms}. */
    public List<Observation> observe(Check check, String terms) {
        return check.observe(analysis(), terms(check, terms));
    }

    /** As {@link #observe}, each observation as one line of text with all of its facts: see {@link #line}. */
    public List<String> check(Check check, String terms) {
        return observe(check, terms).stream().map(PlanInFeet::line).toList();
    }

    /** {@code fails OF-1 to W-1: 4.00 ft; lacks access of walk W-1; a note}. */
    public static String line(Observation seen) {
        StringBuilder line = new StringBuilder(seen.outcome().word());
        seen.subject().ifPresent(subject -> line.append(' ').append(subject.id()));
        seen.other().ifPresent(other -> line.append(" to ").append(other.id()));
        seen.measured()
                .ifPresent(measured -> line.append(": ")
                        .append(measured.limit()
                                .map(limit -> Printed.beside(measured.value(), limit))
                                .orElseGet(() -> Printed.of(measured.value(), Unit.FOOT))));
        seen.missing().stream()
                .map(Missing::what)
                .forEach(what -> line.append("; lacks ").append(what));
        seen.notes().forEach(note -> line.append("; ").append(note));
        return line.toString();
    }

    /**
     * Terms, one to a line: {@code from: outfall}, {@code from_where: kind = 'gas'}, {@code at_least: 12 in when above =
     * 'drive'}, {@code at_least: none when to_outfall_ft <= 10}. The cases of a limit stand in their order.
     */
    public static Terms terms(Check check, String text) {
        Terms terms = Terms.none();
        for (Parameter<?> parameter : check.parameters()) {
            List<String> given = given(parameter.name(), text);
            if (!given.isEmpty()) {
                terms = with(terms, parameter, given, given(parameter.name() + "_where", text));
            }
        }
        return terms;
    }

    private static <T> Terms with(Terms terms, Parameter<T> parameter, List<String> given, List<String> where) {
        Object value;
        if (parameter.form() instanceof Parameter.Form.LimitOf limit) {
            value = new Limits(given.stream().map(each -> limit(limit, each)).toList());
        } else if (parameter.form() instanceof Parameter.Form.QuantityOf quantity) {
            value = Written.parse(given.get(0), quantity.dimension()).quantity();
        } else if (parameter.form() instanceof Parameter.Form.OneOf) {
            value = given.get(0);
        } else if (parameter.form() instanceof Parameter.Form.ConditionOn) {
            value = Condition.parse(given.get(0), HERE);
        } else if (parameter.form() instanceof Parameter.Form.AttributesOf) {
            value = new AttributeList(Stream.of(given.get(0).split(", "))
                    .<Attribute<?>>map(name -> Attribute.named(name).orElseThrow())
                    .toList());
        } else {
            Condition condition = where.isEmpty() ? Condition.ALWAYS : Condition.parse(where.get(0), HERE);
            value = new Selection(Role.named(given.get(0)).orElseThrow(), condition);
        }
        return terms.with(parameter, parameter.type().cast(value));
    }

    private static Limits.Case limit(Parameter.Form.LimitOf form, String text) {
        String[] parts = text.split(" when ", 2);
        Condition when = parts.length == 1 ? Condition.ALWAYS : Condition.parse(parts[1], HERE);
        Optional<org.fallrule.measure.Limit> limit = parts[0].equals("none")
                ? Optional.empty()
                : Optional.of(new org.fallrule.measure.Limit(form.bound(), Written.parse(parts[0], form.dimension())));
        return new Limits.Case(when, limit, HERE);
    }

    private static List<String> given(String key, String text) {
        return text.lines()
                .filter(line -> line.strip().startsWith(key + ":"))
                .map(line -> line.strip().substring(key.length() + 1).strip())
                .toList();
    }

    private PlanInFeet with(Role role, Layer layer) {
        Map<Role, Layer> more = new EnumMap<>(Role.class);
        more.putAll(layers);
        more.put(role, layer);
        return new PlanInFeet(more, survey, waivers, locality);
    }

    private static Attributes attributes(String... texts) {
        Map<Attribute<?>, Object> said = new LinkedHashMap<>();
        for (String text : texts) {
            String[] parts = text.split("=", 2);
            Attribute<?> attribute = Attribute.named(parts[0].strip()).orElseThrow();
            said.put(attribute, value(attribute, parts[1].strip()));
        }
        return Attributes.of(said);
    }

    private static Object value(Attribute<?> attribute, String text) {
        Optional<Dimension> dimension = attribute.dimension();
        if (dimension.isPresent()) {
            Quantity quantity = Written.parse(text, dimension.get()).quantity();
            return quantity;
        }
        return attribute.type() == Boolean.class ? (Object) Boolean.valueOf(text) : text;
    }

    private static Geometry geometry(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(wkt, e);
        }
    }

    private static Coordinate inMetres(Coordinate feet) {
        double foot = Unit.FOOT.toSi();
        return new Coordinate(feet.x * foot, feet.y * foot, feet.getZ() * foot);
    }

    private static Geometry moved(Geometry geometry, Function<Coordinate, Coordinate> move) {
        Geometry copy = geometry.copy();
        copy.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence places, int i) {
                Coordinate to = move.apply(places.getCoordinateCopy(i));
                places.setOrdinate(i, 0, to.x);
                places.setOrdinate(i, 1, to.y);
                if (places.hasZ()) {
                    places.setOrdinate(i, 2, to.getZ());
                }
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return copy;
    }
}
