package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class ClipTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final Envelope VIEW = new Envelope(0, 10, 0, 10);

    private static Geometry wkt(String text) {
        try {
            return new WKTReader(GEOMETRY).read(text);
        } catch (ParseException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static String clipped(String text) {
        return new Clip(VIEW).of(wkt(text)).toText();
    }

    @Test
    void aLineKeepsItsDirectionInEveryPart() {
        assertThat(clipped("LINESTRING (7 5, 7 15, 5 15, 5 5, -5 5)"))
                .isEqualTo("MULTILINESTRING ((7 5, 7 10), (5 10, 5 5, 0 5))");
    }

    @Test
    void whatLiesOutsideOrOnlyTouchesIsNothing() {
        assertThat(clipped("LINESTRING (0 20, 20 20, 20 0)")).isEqualTo("LINESTRING EMPTY");
        assertThat(clipped("POLYGON ((10 0, 20 0, 20 10, 10 0))")).isEqualTo("POLYGON EMPTY");
        assertThat(clipped("POINT (11 5)")).isEqualTo("POINT EMPTY");
    }

    @Test
    void anAreaThatComesInTwiceIsTwoAreas() {
        Geometry twice = new Clip(VIEW).of(wkt("POLYGON ((-8 2, 5 2, 5 4, -5 4, -5 6, 5 6, 5 8, -8 8, -8 2))"));

        assertThat(twice.getNumGeometries()).isEqualTo(2);
        assertThat(twice.isValid()).isTrue();
        assertThat(twice.getArea()).isEqualTo(20);
    }

    @Test
    void aHoleThatFillsTheViewLeavesNothing() {
        assertThat(clipped("POLYGON ((-5 -5, 20 -5, 20 20, -5 20, -5 -5), (-2 -2, 12 -2, 12 12, -2 12, -2 -2))"))
                .isEqualTo("POLYGON EMPTY");
    }

    @Test
    void anAreaWhoseEdgesCrossIsMadeSound() {
        Geometry inside = new Clip(VIEW).of(wkt("POLYGON ((1 1, 9 9, 9 1, 1 9, 1 1))"));
        Geometry across = new Clip(VIEW).of(wkt("POLYGON ((-4 1, 4 9, 4 1, -4 9, -4 1))"));

        assertThat(inside.isValid()).isTrue();
        assertThat(inside.getArea()).isEqualTo(32);
        assertThat(across.isValid()).isTrue();
        assertThat(across.getArea()).isEqualTo(16);
    }

    /** A second way to cut: JTS's own intersection. */
    @Property(tries = 300)
    void anyPartIsAsLargeAsTheIntersection(@ForAll long seed) {
        Random random = new Random(seed);
        Coordinate[] ring = new Coordinate[4 + random.nextInt(12)];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(30 * random.nextDouble() - 10, 30 * random.nextDouble() - 10);
        }
        ring[ring.length - 1] = ring[0].copy();
        Geometry line = GEOMETRY.createLineString(ring);
        Geometry area = GeometryFixer.fix(GEOMETRY.createPolygon(ring));
        Geometry frame = GEOMETRY.toGeometry(VIEW);
        Clip clip = new Clip(VIEW);

        assertThat(clip.of(line).getLength()).isCloseTo(line.intersection(frame).getLength(), within());
        assertThat(clip.of(area).getArea()).isCloseTo(area.intersection(frame).getArea(), within());
        assertThat(clip.of(area).isValid()).isTrue();
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-9);
    }
}
