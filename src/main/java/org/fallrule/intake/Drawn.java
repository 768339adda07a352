package org.fallrule.intake;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.Puntal;

/** The forms of geometry that features are drawn in. */
final class Drawn {
    private Drawn() {}

    /** The form that most features have; none where nothing is drawn. */
    static Optional<Role.Form> as(List<RawFeature> features) {
        Map<Role.Form, Integer> counts = new EnumMap<>(Role.Form.class);
        for (RawFeature feature : features) {
            feature.geometry().flatMap(Drawn::form).ifPresent(form -> counts.merge(form, 1, Integer::sum));
        }
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    /** Whether features of a form can stand for a role. */
    static boolean fits(Role role, Role.Form form) {
        return role.form() == Role.Form.ANY || role.form() == form;
    }

    /** Whether features of a form can be made into a role: a lot may be drawn as the lines around it. */
    static boolean canBe(Role role, Role.Form form) {
        return fits(role, form) || (role == Role.LOT && form == Role.Form.LINE);
    }

    private static Optional<Role.Form> form(Geometry geometry) {
        if (geometry instanceof Puntal) {
            return Optional.of(Role.Form.POINT);
        }
        if (geometry instanceof Lineal) {
            return Optional.of(Role.Form.LINE);
        }
        return geometry instanceof Polygonal ? Optional.of(Role.Form.AREA) : Optional.empty();
    }

    /** Whether any has a height at a vertex. */
    static boolean isRaised(List<RawFeature> features) {
        return features.stream()
                .flatMap(feature -> feature.geometry().stream())
                .filter(geometry -> !geometry.isEmpty())
                .anyMatch(geometry -> Double.isFinite(geometry.getCoordinate().getZ()));
    }

    /** {@code 12 points}, of a table of which not every feature was kept {@code at least 12 points}. */
    static String counted(LooseLayers.Table table, List<RawFeature> features) {
        String form = as(features).map(Role.Form::spoken).orElse("features");
        boolean isAll = features.size() == table.raw().features().size();
        long count = isAll ? table.count() : features.size();
        return (isAll || !table.isSampled() ? "" : "at least ") + count + " "
                + (count == 1 ? form.substring(0, form.length() - 1) : form);
    }
}
