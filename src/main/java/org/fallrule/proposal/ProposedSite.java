package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** A plan with a proposed drain in the place of its own. Waivers are left out: a proposal needs none. */
final class ProposedSite {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final SiteAnalysis analysis;
    private final Stock stock;
    private final Grades grades;
    private final Map<Drain.Reach, String> ids = new HashMap<>();

    ProposedSite(SiteAnalysis analysis, Stock stock, Grades grades) {
        this.analysis = analysis;
        this.stock = stock;
        this.grades = grades;
        grades.inOrder().forEach(reach -> ids.put(reach, "P-" + (ids.size() + 1)));
    }

    String id(Drain.Reach reach) {
        return ids.getOrDefault(reach, "");
    }

    Site with(List<Coordinate> cleanouts, Optional<Length> apron) {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        layers.putAll(analysis.site().layers());
        layers.put(Role.PIPE, layer(pipes()));
        layers.put(Role.OUTFALL, layer(List.of(outfall(apron))));
        layers.put(Role.INLET, layer(inlets()));
        layers.put(Role.CLEANOUT, layer(cleanouts(cleanouts)));
        return withLayers(analysis.site(), layers);
    }

    static Site withLayers(Site site, Map<Role, Layer> layers) {
        return new Site(
                site.id(),
                site.name(),
                site.county(),
                site.house(),
                site.crs(),
                site.datum(),
                site.frame(),
                site.survey(),
                layers,
                List.of(),
                List.of(),
                site.storm(),
                site.metric());
    }

    private static Layer layer(List<Feature> features) {
        return new Layer.Supplied(
                features,
                features.isEmpty()
                        ? List.of()
                        : List.of(features.get(0).origin().file()));
    }

    private List<Feature> pipes() {
        return grades.inOrder().stream()
                .map(reach -> stock.pipe(
                        id(reach),
                        reach.axis().toArray(new Coordinate[0]),
                        grades.sizes().getOrDefault(reach, stock.smallest()),
                        level(reach.up()),
                        level(reach.down())))
                .toList();
    }

    private Elevation level(int place) {
        return new Elevation(grades.levels().getOrDefault(place, 0.0));
    }

    private Feature outfall(Optional<Length> apron) {
        Drain drain = grades.drain();
        Feature outfall = StandingGround.outfall(
                analysis,
                drain.places().get(drain.outfall()).place(),
                level(drain.outfall()).metres());
        return apron.map(length -> changed(outfall, outfall.attributes().with(Attribute.APRON_LENGTH, length)))
                .orElse(outfall);
    }

    private static Feature changed(Feature feature, Attributes attributes) {
        return new Feature(feature.role(), feature.id(), feature.geometry(), attributes, feature.origin());
    }

    /** An inlet gets the invert that the drain begins with there. */
    private List<Feature> inlets() {
        List<Feature> inlets = new ArrayList<>();
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            Optional<Integer> place = placeOf(inlet);
            inlets.add(place.map(at -> changed(inlet, inlet.attributes().with(Attribute.INVERT, level(at))))
                    .orElse(inlet));
        }
        return inlets;
    }

    private Optional<Integer> placeOf(Feature inlet) {
        List<Drain.Node> places = grades.drain().places();
        for (int at = 0; at < places.size(); at++) {
            if (places.get(at).inlet().filter(inlet::equals).isPresent()) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private List<Feature> cleanouts(List<Coordinate> places) {
        List<Feature> cleanouts = new ArrayList<>();
        for (Coordinate place : places) {
            String id = "CO-" + (cleanouts.size() + 1);
            Attributes attributes = Attributes.none().with(Attribute.STATUS, "proposed");
            Optional<Elevation> rim = analysis.ground().flatMap(ground -> ground.elevationAt(place));
            cleanouts.add(new Feature(
                    Role.CLEANOUT,
                    id,
                    GEOMETRY.createPoint(place),
                    rim.map(level -> attributes.with(Attribute.RIM, level)).orElse(attributes),
                    Place.of("cleanout.geojson").feature(id)));
        }
        return cleanouts;
    }
}
