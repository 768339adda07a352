package org.fallrule.check.statement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Condition;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.site.Attribute;
import org.fallrule.site.AttributeName;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A feature, or all of a pipe that lies under one kind of surface, with what is known of it.
 *
 * @param feature the feature
 * @param attributes what the plan says of it, and the surface
 * @param where the part
 * @param stations the stations of the part, {@code 0+10.0 to 0+20.0}; empty where it is the whole
 */
record SurfacePart(Feature feature, Attributes attributes, Geometry where, String stations) {

    /** The parts of which the condition is to be asked: more than one only where it depends on what lies above a pipe. */
    static List<SurfacePart> of(SiteAnalysis analysis, Condition condition, Feature feature) {
        if (names(condition, Attribute.ABOVE)) {
            return analysis.network()
                    .runOf(feature)
                    .map(run -> ofRun(analysis, run))
                    .orElseGet(() -> List.of(whole(feature)));
        }
        if (names(condition, Attribute.STANDS_IN)) {
            Attributes standing = analysis.surfaces()
                    .at(feature.geometry().getCoordinate())
                    .map(surface -> feature.attributes().with(Attribute.STANDS_IN, surface))
                    .orElse(feature.attributes());
            return List.of(new SurfacePart(feature, standing, feature.geometry(), ""));
        }
        return List.of(whole(feature));
    }

    private static boolean names(Condition condition, Attribute<?> attribute) {
        return condition.names().values().stream().anyMatch(name -> name.attribute() == attribute);
    }

    private static SurfacePart whole(Feature feature) {
        return new SurfacePart(feature, feature.attributes(), feature.geometry(), "");
    }

    private static List<SurfacePart> ofRun(SiteAnalysis analysis, PipeRun run) {
        LengthIndexedLine axis = new LengthIndexedLine(run.axis());
        Map<Optional<String>, List<Reach>> bySurface = new LinkedHashMap<>();
        double from = 0;
        for (double to : breaks(analysis, run.axis())) {
            if (to - from > Dimension.LENGTH.tolerance()) {
                Optional<String> above = analysis.surfaces().at(axis.extractPoint((from + to) / 2));
                bySurface.computeIfAbsent(above, any -> new ArrayList<>()).add(new Reach(from, to));
                from = to;
            }
        }
        return bySurface.isEmpty()
                ? List.of(whole(run.pipe()))
                : bySurface.entrySet().stream()
                        .map(entry -> ofRun(analysis, run, entry.getKey(), Reach.joined(entry.getValue())))
                        .toList();
    }

    private static SurfacePart ofRun(SiteAnalysis analysis, PipeRun run, Optional<String> above, List<Reach> reaches) {
        LengthIndexedLine axis = new LengthIndexedLine(run.axis());
        Attributes known = run.pipe().attributes();
        LineString[] lines = reaches.stream()
                .map(reach -> (LineString) axis.extractLine(reach.from(), reach.to()))
                .toArray(LineString[]::new);
        return new SurfacePart(
                run.pipe(),
                above.map(surface -> known.with(Attribute.ABOVE, surface)).orElse(known),
                lines.length == 1 ? lines[0] : run.axis().getFactory().createMultiLineString(lines),
                analysis.stations(reaches));
    }

    private static Iterable<Double> breaks(SiteAnalysis analysis, LineString axis) {
        TreeSet<Double> breaks = new TreeSet<>(analysis.surfaces().breaksAlong(axis));
        breaks.add(axis.getLength());
        return breaks;
    }

    /** Holds the part against a condition. */
    Observation held(Condition condition) {
        return switch (condition.test(attributes)) {
            case TRUE -> Observation.plain(Outcome.MEETS, feature).at(where);
            case FALSE ->
                Observation.plain(Outcome.FAILS, feature)
                        .at(where)
                        .noting(said(condition))
                        .noting("asked is " + condition.text());
            case UNKNOWN -> undecided(condition).at(where);
        };
    }

    /** {@code joint solvent_weld, material polyethylene, above drive from station 0+10.0 to 0+20.0}. */
    private String said(Condition condition) {
        Map<String, AttributeName> names = new TreeMap<>(condition.names());
        String values =
                names.values().stream().flatMap(name -> said(name).stream()).collect(Collectors.joining(", "));
        return values + (attributes.has(Attribute.ABOVE) ? " from station " + stations : "");
    }

    private Optional<String> said(AttributeName name) {
        return attributes
                .get(name.attribute())
                .map(value -> name.attribute().spoken() + " "
                        + (value instanceof Quantity quantity ? printed(quantity, name) : String.valueOf(value)));
    }

    private static String printed(Quantity quantity, AttributeName name) {
        return Printed.of(quantity, name.unit().orElse(Unit.usual(quantity.dimension())));
    }

    private Observation undecided(Condition condition) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, feature);
        List<String> lacking =
                new ArrayList<>(List.of(condition.lacking(attributes).split(", ", -1)));
        boolean surface = lacking.remove(Attribute.ABOVE.name()) || lacking.remove(Attribute.STANDS_IN.name());
        if (surface) {
            String what = feature.role() == Role.PIPE
                    ? "what lies above " + feature.spoken() + " from station " + stations
                    : "what " + feature.spoken() + " stands in";
            seen = seen.lacking(new Missing(
                    what,
                    "supply the walk and drive layers, or list them under absent in site.yaml if there are none"));
        }
        if (lacking.isEmpty()) {
            return seen;
        }
        String names = String.join(", ", lacking);
        return seen.lacking(new Missing(
                names + " of " + feature.spoken(),
                "give " + names + " in " + feature.origin().file()));
    }
}
