package org.fallrule.reader.shapefile;

/** Contents of {@code .shp} records, byte by byte as the Technical Description lays them out. */
final class Content {
    private Content() {}

    static byte[] nothing() {
        return new Bytes().little(0).toArray();
    }

    static byte[] point(double x, double y) {
        return new Bytes().little(1).doubles(x, y).toArray();
    }

    static byte[] line(double... xy) {
        return parts(3, xy);
    }

    static byte[] polygon(double[]... rings) {
        return parts(5, rings);
    }

    /** Type, box, counts, part starts, pairs. */
    static byte[] parts(int type, double[]... parts) {
        int points = 0;
        Bytes starts = new Bytes();
        Bytes pairs = new Bytes();
        for (double[] part : parts) {
            starts.little(points);
            pairs.doubles(part);
            points += part.length / 2;
        }
        return new Bytes()
                .little(type)
                .doubles(0, 0, 0, 0)
                .little(parts.length, points)
                .raw(starts.toArray())
                .raw(pairs.toArray())
                .toArray();
    }

    /** A clockwise square, as a shell is wound. */
    static double[] square(double left, double bottom, double side) {
        return new double[] {
            left, bottom, left, bottom + side, left + side, bottom + side, left + side, bottom, left, bottom
        };
    }

    static double[] reversed(double[] ring) {
        double[] reversed = new double[ring.length];
        for (int at = 0; at < ring.length; at += 2) {
            reversed[at] = ring[ring.length - 2 - at];
            reversed[at + 1] = ring[ring.length - 1 - at];
        }
        return reversed;
    }
}
