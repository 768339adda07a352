package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Length;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The surroundings of one finding: what was measured, its value, and for a distance in plan the limit as a band. */
public final class SnippetDrawing {
    /** Least width of what is shown. */
    private static final double LEAST = Length.feet(20).metres();

    /** Share of the measured geometry's larger side that is shown around it. */
    private static final double MARGIN = 0.3;

    private static final double FLATTEST = 0.65;
    private static final double TALLEST = 0.8;

    private final Report report;
    private final Finding finding;
    private final Optional<PlanLimit> planLimit;

    private SnippetDrawing(Report report, Finding finding) {
        this.report = report;
        this.finding = finding;
        this.planLimit = PlanLimit.of(finding);
    }

    /** Draws a finding; nothing when it does not lie anywhere. */
    public static Optional<Drawing> of(Report report, Finding finding) {
        return finding.observation()
                .where()
                .filter(where -> !where.isEmpty())
                .map(where -> new SnippetDrawing(report, finding).drawing(where));
    }

    private Drawing drawing(Geometry where) {
        Envelope view = Extent.shaped(extent(where), FLATTEST, TALLEST);
        List<DrawingLayer> layers = new ArrayList<>();
        List<DrawingLayer> features = new FeatureShapes(report.analysis(), view, keptIn(view)).layers();
        features.stream().filter(layer -> isGround(layer.name())).forEach(layers::add);
        limitLayer(view).ifPresent(layers::add);
        underlay(where).ifPresent(layers::add);
        features.stream().filter(layer -> !isGround(layer.name())).forEach(layers::add);
        RemedyShapes.of(report, finding).ifPresent(layers::add);
        layers.add(new DrawingLayer("measured", measured(where, view)));
        String about = PlainText.clipped(Sentence.about(finding.observation()), 200);
        return new Drawing("Map of " + about, PlainText.clipped(Sentence.of(finding), 600), view, layers);
    }

    private static boolean isGround(String layer) {
        return Role.named(layer)
                .filter(role -> role.form() == Role.Form.AREA && role != Role.LOT && role != Role.EASEMENT)
                .isPresent();
    }

    private Envelope extent(Geometry where) {
        Envelope around = Extent.roomy(where.getEnvelopeInternal(), MARGIN, LEAST);
        planLimit.ifPresent(limit -> {
            Envelope band = new Envelope(limit.from(), limit.to());
            band.expandBy(1.25 * limit.limit() + 0.5);
            around.expandToInclude(band);
        });
        return around;
    }

    /** What is measured, and pipes, inlets and outfalls beside it, keep their names. */
    private Set<Feature> keptIn(Envelope view) {
        Set<Feature> kept = new HashSet<>();
        for (Role role : List.of(Role.PIPE, Role.INLET, Role.OUTFALL)) {
            report.site().features(role).stream()
                    .filter(feature -> view.intersects(feature.geometry().getEnvelopeInternal()))
                    .forEach(kept::add);
        }
        Observation seen = finding.observation();
        seen.subject().ifPresent(kept::add);
        seen.other().ifPresent(kept::add);
        return kept;
    }

    private Optional<DrawingLayer> limitLayer(Envelope view) {
        return planLimit.map(limit -> {
            List<Shape> shapes = new ArrayList<>();
            Geometry band = new Clip(view).wider(0.1).of(limit.band());
            String asked = finding.observation()
                    .measured()
                    .flatMap(Sentence::asked)
                    .map(PlainText::of)
                    .orElse("");
            shapes.add(new Shape.Area(Look.LIMIT, band, asked));
            Geometry visible = new Clip(view).of(band);
            if (!visible.isEmpty()) {
                shapes.add(new Shape.Label(Shape.Rank.LIMIT, asked, visible, false));
            }
            return new DrawingLayer("limit", shapes);
        });
    }

    /** The measured line or area shines through under what is drawn over it. */
    private Optional<DrawingLayer> underlay(Geometry where) {
        if (planLimit.isPresent() || where.getDimension() == 0) {
            return Optional.empty();
        }
        Geometry line = where.getDimension() == 2 ? where.getBoundary() : where;
        return Optional.of(
                new DrawingLayer("measured_along", List.of(new Shape.Line(Look.MEASURED, line, "measured here"))));
    }

    private List<Shape> measured(Geometry where, Envelope view) {
        Optional<String> value = finding.observation().measured().map(Sentence::shown);
        if (planLimit.isPresent()) {
            PlanLimit limit = planLimit.get();
            return List.of(new Shape.Dimension(limit.from(), limit.to(), value.orElse("")));
        }
        List<Shape> shapes = new ArrayList<>();
        Geometry visible = new Clip(view).of(where);
        if (where.getDimension() == 0) {
            for (Coordinate place : visible.getCoordinates()) {
                shapes.add(new Shape.Sign(Look.MEASURED_PLACE, place, "measured here"));
            }
        }
        value.ifPresent(text -> shapes.add(new Shape.Label(Shape.Rank.VALUE, text, anchor(where), true)));
        return shapes;
    }

    private Geometry anchor(Geometry where) {
        boolean isArea = where.getDimension() == 2;
        return isArea ? new GeometryFactory().createPoint(PlanDrawing.middle(where)) : where;
    }
}
