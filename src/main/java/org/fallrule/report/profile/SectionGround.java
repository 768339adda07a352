package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.GroundAlong;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.network.FlowLine;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** The ground over a line, broken where it is not known, and a strip that tells what lies on it. */
final class SectionGround {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** Gaps shorter than this, in metres, come from places on the edge of the surface and are not spoken of. */
    private static final double GAP = 0.01;

    private final SiteAnalysis analysis;
    private final FlowLine line;

    SectionGround(SiteAnalysis analysis, FlowLine line) {
        this.analysis = analysis;
        this.line = line;
    }

    List<Shape> shapes(SectionScale scale) {
        List<Shape> shapes = new ArrayList<>();
        List<Coordinate> run = new ArrayList<>();
        for (FlowLine.Leg leg : line.legs()) {
            for (GroundAlong.Piece piece : new GroundAlong(analysis, leg.run()).pieces()) {
                if (piece.heights().isEmpty()) {
                    close(run, shapes);
                    continue;
                }
                GroundAlong.Ends ends = piece.heights().get();
                if (run.isEmpty()) {
                    run.add(scale.at(leg.start() + piece.from(), ends.from()));
                }
                run.add(scale.at(leg.start() + piece.to(), ends.to()));
            }
        }
        close(run, shapes);
        return shapes;
    }

    private static void close(List<Coordinate> run, List<Shape> shapes) {
        if (run.size() > 1) {
            shapes.add(new Shape.Line(
                    Look.GROUND_LINE, GEOMETRY.createLineString(run.toArray(Coordinate[]::new)), "ground"));
        }
        run.clear();
    }

    /** A stretch of the line, in metres. */
    record Gap(double from, double to) {}

    /** Where the ground is not known. */
    List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        for (FlowLine.Leg leg : line.legs()) {
            for (GroundAlong.Piece piece : new GroundAlong(analysis, leg.run()).pieces()) {
                double from = leg.start() + piece.from();
                double to = leg.start() + piece.to();
                if (piece.heights().isPresent() || to - from < GAP) {
                    continue;
                }
                int last = gaps.size() - 1;
                if (last >= 0 && from - gaps.get(last).to() < GAP) {
                    gaps.set(last, new Gap(gaps.get(last).from(), to));
                } else {
                    gaps.add(new Gap(from, to));
                }
            }
        }
        return gaps;
    }

    /** What lies above, as boxes between two heights of the drawing. */
    List<Shape> strip(double bottom, double top) {
        List<Shape> shapes = new ArrayList<>();
        for (FlowLine.Leg leg : line.legs()) {
            for (GroundAlong.Surface surface : new GroundAlong(analysis, leg.run()).surfaces()) {
                Envelope box = new Envelope(leg.start() + surface.from(), leg.start() + surface.to(), bottom, top);
                String word = surface.word().orElse("not known");
                shapes.add(new Shape.Area(look(surface.word()), GEOMETRY.toGeometry(box), word));
            }
        }
        return merged(shapes);
    }

    private static List<Shape> merged(List<Shape> boxes) {
        List<Shape> merged = new ArrayList<>();
        for (Shape shape : boxes) {
            Shape.Area next = (Shape.Area) shape;
            Shape.Area last = merged.isEmpty() ? next : (Shape.Area) merged.get(merged.size() - 1);
            if (!merged.isEmpty() && last.title().equals(next.title())) {
                Envelope both = last.outline().getEnvelopeInternal();
                both.expandToInclude(next.outline().getEnvelopeInternal());
                merged.set(merged.size() - 1, new Shape.Area(next.look(), GEOMETRY.toGeometry(both), next.title()));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    private static Look look(Optional<String> word) {
        return switch (word.orElse("")) {
            case "lawn" -> Look.LAWN;
            case "walk" -> Look.WALK;
            case "drive" -> Look.DRIVE;
            case "street" -> Look.STREET;
            case "building" -> Look.BUILDING;
            default -> Look.SURFACE_UNKNOWN;
        };
    }
}
