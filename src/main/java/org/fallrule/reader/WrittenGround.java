package org.fallrule.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Reads the ground of a {@link WrittenPlan}: {@code {spots: "0 0 100, 40 0 99.5"}} or a plane, {@code {height: 100 ft, at: "0
 * 0", rise_east: -2 %, rise_north: 0 %, over: "0 0, 100 80"}}.
 */
final class WrittenGround {
    /** A plane is written as so many spots by so many. */
    private static final int SPOTS = 11;

    private static final Pattern BETWEEN = Pattern.compile("[,;]");
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Unit unit;
    private final List<Fault> faults;
    private final List<Feature> spots = new ArrayList<>();

    WrittenGround(Unit unit, List<Fault> faults) {
        this.unit = unit;
        this.faults = faults;
    }

    List<Feature> spots(Node.Mapping ground) {
        Keys keys = new Keys(ground, faults);
        Optional<Node.Scalar> places = keys.scalar("spots");
        if (places.isPresent()) {
            numbers(places.get(), 3)
                    .forEach(at ->
                            add(at[0], at[1], at[2] * unit.toSi(), places.get().place()));
        } else {
            plane(keys);
        }
        keys.refuseOthers("ground");
        return spots;
    }

    private void plane(Keys keys) {
        Optional<Double> height = keys.required("height", "the plane's height with its unit, or spots: \"x y z, …\"")
                .flatMap(text -> si(text, Dimension.ELEVATION));
        Optional<double[]> at = keys.required("at", "where the plane has that height, as x y")
                .flatMap(text -> numbers(text, 2).stream().findFirst());
        double east = keys.scalar("rise_east")
                .flatMap(text -> si(text, Dimension.SLOPE))
                .orElse(0.0);
        double north = keys.scalar("rise_north")
                .flatMap(text -> si(text, Dimension.SLOPE))
                .orElse(0.0);
        Optional<Node.Scalar> over = keys.required("over", "two opposite corners, as x y, x y");
        List<double[]> corners = over.map(text -> numbers(text, 2)).orElse(List.of());
        if (over.isPresent() && corners.size() != 2) {
            fault(over.get(), "wanted two opposite corners, as \"0 0, 100 80\"");
        }
        if (height.isEmpty() || at.isEmpty() || corners.size() != 2) {
            return;
        }
        for (int i = 0; i < SPOTS * SPOTS; i++) {
            double x = between(corners.get(0)[0], corners.get(1)[0], i % SPOTS);
            double y = between(corners.get(0)[1], corners.get(1)[1], i / SPOTS);
            double rise = (x - at.get()[0]) * east + (y - at.get()[1]) * north;
            add(x, y, height.get() + rise * unit.toSi(), over.get().place());
        }
    }

    private static double between(double one, double other, int step) {
        return one + (other - one) * step / (SPOTS - 1);
    }

    private void add(double x, double y, double metres, Place place) {
        String id = "S-" + (spots.size() + 1);
        Coordinate at = new Coordinate(x * unit.toSi(), y * unit.toSi(), metres);
        spots.add(new Feature(
                Role.SPOT, id, GEOMETRY.createPoint(at), Attributes.none().with(Attribute.ID, id), place.feature(id)));
    }

    private Optional<Double> si(Node.Scalar text, Dimension dimension) {
        try {
            return Optional.of(Written.parse(text.text(), dimension).quantity().si());
        } catch (UnreadableQuantity e) {
            fault(text, e.says());
            return Optional.empty();
        }
    }

    /** Places of so many numbers each, commas between them. */
    private List<double[]> numbers(Node.Scalar text, int each) {
        List<double[]> all = new ArrayList<>();
        for (String place : BETWEEN.split(text.text(), -1)) {
            String[] parts = place.strip().split("\\s+", -1);
            double[] numbers = new double[each];
            boolean read = parts.length == each;
            for (int i = 0; read && i < each; i++) {
                try {
                    numbers[i] = Double.parseDouble(parts[i]);
                    read = Math.abs(numbers[i]) < 1e6;
                } catch (NumberFormatException e) {
                    read = false;
                }
            }
            if (!read) {
                fault(text, "\"" + place.strip() + "\" is no place; wanted " + each + " numbers with blanks between");
                return List.of();
            }
            all.add(numbers);
        }
        return all;
    }

    private void fault(Node.Scalar at, String says) {
        faults.add(new Fault(at.place(), says));
    }
}
