package org.fallrule.terrain;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;

/**
 * The edges of a triangulation that tell how close to each other the survey's points lie. Edges along given lines and
 * between two points of one level on lines are none of them: they are as long as their line was drawn.
 */
final class SurveyLinks {
    private final Triangulation tin;

    SurveyLinks(Triangulation tin) {
        this.tin = tin;
    }

    /** The length in metres that a share of the links does not pass; infinite where there are none. */
    double length(double share) {
        long[] ends = new long[3 * tin.count()];
        int count = 0;
        for (int side = 0; side < ends.length; side++) {
            int from = from(side);
            int to = to(side);
            if (isLink(from, to)) {
                ends[count++] = (long) Math.min(from, to) << 32 | Math.max(from, to);
            }
        }
        Arrays.sort(ends, 0, count);
        double[] lengths = new double[count];
        int links = 0;
        for (int i = 0; i < count; i++) {
            // An edge of two triangles is one link.
            if (i == 0 || ends[i] != ends[i - 1]) {
                lengths[links++] = length((int) (ends[i] >> 32), (int) ends[i]);
            }
        }
        Arrays.sort(lengths, 0, links);
        return links == 0 ? Double.POSITIVE_INFINITY : lengths[(int) (share * (links - 1))];
    }

    /** The length in metres of the longest link around a triangle; 0 when it has none. */
    double longestOf(int triangle) {
        double longest = 0;
        for (int side = 3 * triangle; side < 3 * triangle + 3; side++) {
            if (isLink(from(side), to(side))) {
                longest = Math.max(longest, length(from(side), to(side)));
            }
        }
        return longest;
    }

    private int from(int side) {
        return tin.corner(side);
    }

    private int to(int side) {
        return tin.corner(side % 3 == 2 ? side - 2 : side + 1);
    }

    private boolean isLink(int from, int to) {
        if (tin.fixed().isEmpty()) {
            return true;
        }
        Coordinate a = tin.points().get(from);
        Coordinate b = tin.points().get(to);
        boolean isAcrossBend = a.getZ() == b.getZ()
                && tin.fixedEnds().contains(a)
                && tin.fixedEnds().contains(b);
        return !isAcrossBend && !tin.fixed().contains(new Edge(a, b));
    }

    private double length(int from, int to) {
        Coordinate a = tin.points().get(from);
        Coordinate b = tin.points().get(to);
        return Math.sqrt((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y));
    }
}
