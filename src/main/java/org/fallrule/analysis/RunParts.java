package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fallrule.measure.Dimension;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The stations of some of a run's axis. Of a run that comes over its own way again the first time counts. */
public final class RunParts {
    private RunParts() {}

    /** The reaches that a part of the axis makes up, in the order of their stations. */
    public static List<Reach> of(PipeRun run, Geometry part) {
        LengthIndexedLine line = new LengthIndexedLine(run.axis());
        List<Reach> reaches = new ArrayList<>();
        for (int i = 0; i < part.getNumGeometries(); i++) {
            Geometry piece = part.getGeometryN(i);
            if (piece.getLength() > Dimension.LENGTH.tolerance()) {
                double[] ends = line.indicesOf(piece);
                reaches.add(new Reach(Math.min(ends[0], ends[1]), Math.max(ends[0], ends[1])));
            }
        }
        reaches.sort(Comparator.comparingDouble(Reach::from));
        return Reach.joined(reaches);
    }
}
