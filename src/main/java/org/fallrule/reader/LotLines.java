package org.fallrule.reader;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Makes lots of lot lines. A lot has what all lines around it say alike, and is the site's own where lines marked own run all around
 * it; where the lines leave a gap there is no lot, and the gap is told.
 */
final class LotLines {
    /** A line runs along a lot when so many metres of it lie within this distance of the lot's edge. */
    private static final double ALONG = 0.01;

    private final Place file;
    private final List<Feature> lines;
    private final STRtree index = new STRtree();

    private LotLines(List<Feature> lines) {
        this.file = Place.of(lines.get(0).origin().file());
        this.lines = lines;
        for (int i = 0; i < lines.size(); i++) {
            index.insert(lines.get(i).geometry().getEnvelopeInternal(), i);
        }
    }

    /**
     * The lots, those drawn as lines made into areas. Other roles are left as they are.
     *
     * @param shown how messages show a place of the local frame
     * @param faults told when the lines bound nothing
     * @param problems told of gaps
     */
    static List<Feature> joined(
            Role role,
            List<Feature> features,
            Function<Coordinate, String> shown,
            List<Fault> faults,
            List<Fault> problems) {
        List<Feature> lines = features.stream()
                .filter(feature -> feature.geometry() instanceof Lineal)
                .toList();
        if (role != Role.LOT || lines.isEmpty()) {
            return features;
        }
        LotLines lot = new LotLines(lines);
        List<Feature> made = lot.areas(shown, faults, problems);
        return Stream.concat(
                        features.stream().filter(feature -> !(feature.geometry() instanceof Lineal)), made.stream())
                .toList();
    }

    private List<Feature> areas(Function<Coordinate, String> shown, List<Fault> faults, List<Fault> problems) {
        Linework linework = Linework.of(lines.stream().map(Feature::geometry).toList());
        linework.gaps(shown).forEach(says -> problems.add(new Fault(file, says)));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(linework.noded());
        List<Polygon> polygons = new ArrayList<>();
        for (Object polygon : polygonizer.getPolygons()) {
            polygons.add((Polygon) polygon);
        }
        polygons.sort(
                Comparator.comparingDouble((Polygon polygon) -> middle(polygon).getX())
                        .thenComparing(polygon -> middle(polygon).getY()));
        if (polygons.isEmpty()) {
            faults.add(new Fault(
                    file,
                    "its " + lines.size()
                            + " lot lines bound no lot; join the ends of the lines where they should meet,"
                            + " or draw the lots as polygons"));
            problems.stream().filter(problem -> problem.where().equals(file)).forEach(faults::add);
        }
        List<Feature> lots = new ArrayList<>();
        for (Polygon polygon : polygons) {
            lots.add(lot(polygon, "lot " + (lots.size() + 1)));
        }
        return lots;
    }

    private static Point middle(Polygon polygon) {
        return polygon.getCentroid();
    }

    private Feature lot(Polygon area, String number) {
        List<Feature> around = around(area);
        String id = around.size() == 1 ? around.get(0).id() : number;
        Place origin = around.isEmpty() ? file : around.get(0).origin();
        Attributes said = Attributes.alike(around).with(Attribute.ID, id);
        boolean marked =
                around.stream().anyMatch(line -> line.get(Attribute.OWN).isPresent());
        return new Feature(Role.LOT, id, area, marked ? said.with(Attribute.OWN, isOwn(area, around)) : said, origin);
    }

    /** Whether lines that are marked own run all around; a neighbour's line may lie on one of them. */
    private static boolean isOwn(Polygon area, List<Feature> around) {
        List<Geometry> own = around.stream()
                .filter(line -> line.get(Attribute.OWN).orElse(false))
                .map(Feature::geometry)
                .toList();
        Geometry along = area.getFactory().buildGeometry(own).buffer(ALONG);
        return area.getBoundary().difference(along).getLength() <= 4 * ALONG;
    }

    private List<Feature> around(Polygon area) {
        Geometry edge = area.getBoundary().buffer(ALONG);
        List<Integer> around = new ArrayList<>();
        for (Object found : index.query(area.getEnvelopeInternal())) {
            Integer position = (Integer) found;
            if (lines.get(position).geometry().intersection(edge).getLength() > 4 * ALONG) {
                around.add(position);
            }
        }
        return around.stream().sorted().map(lines::get).toList();
    }
}
