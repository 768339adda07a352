package org.fallrule.bookshelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.reader.geojson.GeoJsonReader;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.rulebook.RuleLibrary;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;

/**
 * Where each county lies: {@code counties.geojson} in the folder of rule books, polygons in longitude and latitude (RFC 7946)
 * that have the properties {@code county} and, if their line is known only so well, {@code accuracy}.
 *
 * @param file the file as the user knows it
 * @param areas the counties
 */
public record CountyMap(String file, List<CountyArea> areas) {
    private static final String FILE = "counties.geojson";
    private static final Envelope EARTH = new Envelope(-180, 180, -90, 90);

    public CountyMap {
        areas = List.copyOf(areas);
    }

    /**
     * Reads the map.
     *
     * @return the map; empty when the folder holds none
     * @throws UnusableInput with every fault of the file
     */
    public static Optional<CountyMap> of(RuleLibrary library) {
        return library.file(FILE).map(path -> new Reading(library, path).map());
    }

    /** The map's file as the user knows it. */
    static String shown(RuleLibrary library) {
        return library.file(FILE).map(library::shown).orElse(FILE);
    }

    /** The names of the counties on the map, each once. */
    List<String> counties() {
        return areas.stream().map(CountyArea::county).distinct().toList();
    }

    /** The counties that a lot lies in or comes as near to as their lines are known, in the order of the file. */
    List<CountyArea> at(LotOnMap lot) {
        return areas.stream().filter(lot::reaches).toList();
    }

    private static final class Reading {
        private final RuleLibrary library;
        private final Path path;
        private final String file;
        private final List<Fault> faults = new ArrayList<>();

        Reading(RuleLibrary library, Path path) {
            this.library = library;
            this.path = path;
            this.file = library.shown(path);
        }

        CountyMap map() {
            RawLayer layer = GeoJsonReader.read(path, file);
            faults.addAll(layer.notes());
            layer.crs()
                    .filter(crs -> !crs.equals("OGC:CRS84") && !crs.equals("EPSG:4326"))
                    .ifPresent(crs -> fault(
                            Place.of(file),
                            "is in " + crs + "; give it in longitude and latitude, without a crs (RFC 7946)"));
            List<CountyArea> areas = new ArrayList<>();
            layer.features().forEach(feature -> area(feature).ifPresent(areas::add));
            if (areas.isEmpty()) {
                fault(Place.of(file), "holds no county; draw one, or remove the file");
            }
            if (!faults.isEmpty()) {
                throw new UnusableInput(faults);
            }
            return new CountyMap(file, areas);
        }

        private Optional<CountyArea> area(RawFeature feature) {
            Place place = Place.of(file).feature(feature.label());
            Optional<String> county = county(feature, place.field("county"));
            Optional<Length> accuracy = accuracy(feature, place.field("accuracy"));
            Optional<Geometry> drawn = drawn(feature, place);
            return county.flatMap(
                    name -> accuracy.flatMap(known -> drawn.map(area -> new CountyArea(name, area, known, place))));
        }

        private Optional<String> county(RawFeature feature, Place place) {
            List<String> known = library.counties();
            Optional<String> name =
                    Optional.ofNullable(feature.columns().get("county")).map(String::valueOf);
            if (name.isEmpty()) {
                fault(place, "is missing; give the name of a county's book: " + String.join(", ", known));
            }
            name.filter(each -> !known.contains(each))
                    .ifPresent(each -> fault(
                            place,
                            "there is no book of " + each + Nearest.hint(each, known) + " Known: "
                                    + String.join(", ", known)));
            return name.filter(known::contains);
        }

        private Optional<Length> accuracy(RawFeature feature, Place place) {
            Object text = feature.columns().get("accuracy");
            if (text == null) {
                return Optional.of(new Length(0));
            }
            try {
                double metres = Written.parse(text.toString(), Dimension.LENGTH)
                        .quantity()
                        .si();
                if (metres >= 0) {
                    return Optional.of(new Length(metres));
                }
                fault(place, text + " is negative; give zero or more");
            } catch (UnreadableQuantity e) {
                fault(place, e.says());
            }
            return Optional.empty();
        }

        private Optional<Geometry> drawn(RawFeature feature, Place place) {
            Optional<Geometry> area = feature.geometry().filter(each -> each instanceof Polygonal && !each.isEmpty());
            if (area.isEmpty()) {
                fault(place, "is no polygon; draw the county as one");
            } else if (!EARTH.contains(area.get().getEnvelopeInternal())) {
                fault(place, "is not in longitude and latitude; give it in degrees (RFC 7946)");
            } else if (!area.get().isValid()) {
                fault(place, "crosses itself; draw the county's line so that it does not");
            } else {
                return area;
            }
            return Optional.empty();
        }

        private void fault(Place where, String says) {
            faults.add(new Fault(where, says));
        }
    }
}
