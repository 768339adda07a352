package org.fallrule.reader;

import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.filter.Filter;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Unit;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/**
 * What site.yaml says of one layer.
 *
 * @param role what it stands for
 * @param file its file, relative to the site folder
 * @param table the one of the file's tables that it is, where the file holds several
 * @param crs its coordinate reference system, where the file does not say
 * @param datum the vertical datum of its heights, where the file does not say
 * @param fields the column of an attribute
 * @param units the units of bare numbers, by the name of an attribute or {@code elevation}
 * @param values what a raw value stands for, by attribute
 * @param all what holds for every feature that says nothing else in a column
 * @param where which of the file's features belong to it
 * @param whereText the same as written
 * @param place where site.yaml speaks of it
 */
record LayerSpec(
        Role role,
        String file,
        Optional<Node.Scalar> table,
        Optional<Node.Scalar> crs,
        Optional<Node.Scalar> datum,
        Map<Attribute<?>, Node.Scalar> fields,
        Map<String, Unit> units,
        Map<Attribute<?>, Map<String, String>> values,
        Map<Attribute<?>, Node.Scalar> all,
        Filter where,
        String whereText,
        Place place) {

    static LayerSpec plain(Role role, String file, Place place) {
        return new LayerSpec(
                role,
                file,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                new Filter.Always(),
                "",
                place);
    }

    /** The same layer from one of its file's tables. */
    LayerSpec of(Node.Scalar named) {
        return new LayerSpec(
                role, file, Optional.of(named), crs, datum, fields, units, values, all, where, whereText, place);
    }

    /** The same with another datum. */
    LayerSpec withDatum(Optional<Node.Scalar> newDatum) {
        return new LayerSpec(role, file, table, crs, newDatum, fields, units, values, all, where, whereText, place);
    }

    /** The same as a site sees it that stands in a folder beside the file. */
    LayerSpec shownUp() {
        return new LayerSpec(
                role, SharedFile.UP + file, table, crs, datum, fields, units, values, all, where, whereText, place);
    }

    /** Its file, and its table where one is named, as messages show them: {@code plan.gpkg/drains}. */
    String source() {
        return table.map(named -> file + "/" + named.text()).orElse(file);
    }

    /** Whether a feature of the file belongs to the layer; unknown when it has nothing in a column that is asked for. */
    Truth holds(RawFeature feature) {
        return where.test(name -> Optional.ofNullable(feature.columns().get(name)));
    }
}
