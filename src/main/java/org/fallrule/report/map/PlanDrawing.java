package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.report.Report;
import org.fallrule.report.Sentence;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The whole plan on one map, with the numbers of the findings that fail or are borderline. */
public final class PlanDrawing {
    /** Share of the plan's larger side that the map shows around it. */
    private static final double MARGIN = 0.15;

    /** The same of what contours are looked for in: no sheet reaches farther. */
    private static final double CONTOURED = 0.75;

    /** Least width of the map in metres. */
    private static final double LEAST = 12;

    private static final int TITLE_LENGTH = 300;
    private static final Set<Outcome> MARKED = EnumSet.of(Outcome.FAILS, Outcome.BORDERLINE);
    private static final List<Role> THE_SITE = List.of(Role.PIPE, Role.INLET, Role.OUTFALL, Role.CLEANOUT);

    private final Report report;

    private Optional<GroundContours> contours = Optional.empty();

    /** Draws the plan of a report, or parts of it, as often as asked. */
    public PlanDrawing(Report report) {
        this.report = report;
    }

    /**
     * Draws the plan; nothing when the plan has nothing that lies anywhere.
     *
     * @param flattest least height of the map over its width
     * @param tallest greatest height of the map over its width
     */
    public static Optional<Drawing> of(Report report, double flattest, double tallest) {
        return new PlanDrawing(report).drawing(flattest, tallest);
    }

    /** What a map of the whole plan has to show, in metres of the local frame; nothing when nothing lies anywhere. */
    public static Optional<Envelope> extent(Report report) {
        return Optional.of(new PlanDrawing(report).extent()).filter(extent -> !extent.isNull());
    }

    /** The plan as {@link #of} draws it. */
    public Optional<Drawing> drawing(double flattest, double tallest) {
        return extent(report)
                .map(extent -> drawing(Extent.shaped(Extent.roomy(extent, MARGIN, LEAST), flattest, tallest)));
    }

    /** The contours of all that is drawn of the ground around the plan. */
    private GroundContours contours() {
        GroundContours found = contours.orElseGet(
                () -> GroundContours.over(report.analysis(), Extent.roomy(extent(), CONTOURED, LEAST)));
        contours = Optional.of(found);
        return found;
    }

    /** Draws a part of the plan, in metres of the local frame. */
    public Drawing drawing(Envelope view) {
        List<DrawingLayer> layers = new ArrayList<>(new FeatureShapes(report.analysis(), view, Set.of()).layers());
        if (report.site().features(Role.CONTOUR).isEmpty()) {
            contours()
                    .in(new Envelope(view))
                    .ifPresent(ground -> layers.add(FeatureShapes.placeOf(Role.CONTOUR, layers), ground));
        }
        layers.addAll(FeatureShapes.placeOf(Role.CONTOUR, layers), beside(view));
        RemedyShapes.of(report).ifPresent(layers::add);
        List<Shape> badges = badges();
        if (!badges.isEmpty()) {
            layers.add(new DrawingLayer("findings", badges));
        }
        return new Drawing(
                "Plan of " + PlainText.of(report.site().name()),
                description(),
                view,
                ScaleBar.GroundUnit.of(report.site()),
                layers);
    }

    /** Where an outfall may stand, and the drain that was submitted where this one is proposed in its place. */
    private List<DrawingLayer> beside(Envelope view) {
        Clip shown = new Clip(view).wider(0.1);
        List<Shape> ground = new ArrayList<>();
        report.outlook().standing().stream()
                .filter(each -> each.role() == Role.OUTFALL)
                .map(each -> shown.of(each.area()))
                .filter(area -> !area.isEmpty())
                .forEach(area -> ground.add(new Shape.Area(Look.OUTFALL_GROUND, area, Look.OUTFALL_GROUND.legend())));
        List<Shape> before = new ArrayList<>();
        report.outlook().submitted().stream()
                .flatMap(site -> site.features(Role.PIPE).stream())
                .map(pipe -> shown.of(pipe.geometry()))
                .filter(line -> !line.isEmpty())
                .forEach(line -> before.add(new Shape.Line(Look.SUBMITTED_PIPE, line, Look.SUBMITTED_PIPE.legend())));
        return Stream.of(new DrawingLayer("may_stand", ground), new DrawingLayer("submitted", before))
                .filter(layer -> !layer.shapes().isEmpty())
                .toList();
    }

    private Envelope extent() {
        Envelope extent = new Envelope();
        report.site().ownLot().ifPresent(lot -> extent.expandToInclude(envelope(lot)));
        THE_SITE.forEach(
                role -> report.site().features(role).forEach(feature -> extent.expandToInclude(envelope(feature))));
        if (extent.isNull()) {
            report.site()
                    .layers()
                    .values()
                    .forEach(layer -> layer.features().forEach(feature -> extent.expandToInclude(envelope(feature))));
        }
        return extent;
    }

    private static Envelope envelope(Feature feature) {
        return feature.geometry().getEnvelopeInternal();
    }

    private List<Shape> badges() {
        List<Finding> findings = report.byNeed();
        List<Shape> badges = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            Optional<Geometry> where = finding.observation().where().filter(place -> !place.isEmpty());
            if (MARKED.contains(finding.outcome()) && where.isPresent()) {
                String says = PlainText.clipped(Sentence.of(finding), TITLE_LENGTH);
                badges.add(new Shape.Badge(finding.outcome(), i + 1, middle(where.get()), says));
            }
        }
        return badges;
    }

    /** A place on the geometry near its middle. */
    static Coordinate middle(Geometry geometry) {
        return geometry.getDimension() == 1
                ? middleOfLine(LabelCandidates.longest(geometry))
                : geometry.getInteriorPoint().getCoordinate();
    }

    private static Coordinate middleOfLine(Geometry line) {
        return new LengthIndexedLine(line).extractPoint(line.getLength() / 2);
    }

    private String description() {
        return "The lot with "
                + counted(Role.PIPE, "drain pipe") + ", " + counted(Role.INLET, "inlet") + ", "
                + counted(Role.OUTFALL, "outfall") + " and " + counted(Role.UTILITY, "utility line")
                + ". Numbers mark the findings that fail or are borderline; the list below says what they are.";
    }

    private String counted(Role role, String what) {
        int count = report.site().features(role).size();
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
