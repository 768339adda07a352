package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.network.FlowLine;
import org.fallrule.network.InvertLine;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.report.map.FeatureName;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.map.Shape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The pipes of a line: their invert, and where the size is known their outside from bottom to top. */
final class SectionPipes {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private SectionPipes() {}

    static List<Shape> shapes(FlowLine line, SectionScale scale) {
        List<Shape> shapes = new ArrayList<>();
        for (FlowLine.Leg leg : line.legs()) {
            outside(leg, scale).ifPresent(shapes::add);
        }
        for (FlowLine.Leg leg : line.legs()) {
            invert(leg, scale).ifPresent(shapes::add);
        }
        return shapes;
    }

    private static Optional<Shape> outside(FlowLine.Leg leg, SectionScale scale) {
        return PipeProfile.of(leg.run()).map(pipe -> {
            double end = leg.run().axis().getLength();
            Coordinate first = scale.at(leg.start(), pipe.bottomAt(0));
            Geometry outline = GEOMETRY.createPolygon(new Coordinate[] {
                first,
                scale.at(leg.end(), pipe.bottomAt(end)),
                scale.at(leg.end(), pipe.topAt(end)),
                scale.at(leg.start(), pipe.topAt(0)),
                first.copy()
            });
            return new Shape.Area(Look.PIPE_WALL, outline, name(leg.run()), Optional.of(name(leg.run())));
        });
    }

    private static Optional<Shape> invert(FlowLine.Leg leg, SectionScale scale) {
        return InvertLine.of(leg.run()).map(invert -> {
            Elevation up = invert.at(0);
            Elevation down = invert.at(leg.run().axis().getLength());
            Geometry path =
                    GEOMETRY.createLineString(new Coordinate[] {scale.at(leg.start(), up), scale.at(leg.end(), down)});
            return new Shape.Line(Look.INVERT, path, "invert of " + name(leg.run()), Optional.of(name(leg.run())));
        });
    }

    private static String name(PipeRun run) {
        return FeatureName.of(run.pipe());
    }

    /** What keeps pipes from being drawn whole, each in a sentence. */
    static List<String> lacking(FlowLine line) {
        List<String> lacking = new ArrayList<>();
        for (PipeRun run : line.runs()) {
            String name = "Pipe " + PlainText.clipped(run.id(), 40);
            if (run.invertUp().isEmpty()) {
                lacking.add(name + ": the invert at its upstream end is not given.");
            }
            if (run.invertDown().isEmpty()) {
                lacking.add(name + ": the invert at its downstream end is not given.");
            }
            if (run.size().isEmpty()) {
                lacking.add(name + ": its size is not given, so only the invert is drawn.");
            }
        }
        return lacking;
    }
}
