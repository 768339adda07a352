package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** In Arizona's central zone, in feet. */
class MisreadTest {
    private static final Place WHERE = Place.of("tree.csv");
    private static final CoordinateSystem FEET = CoordinateSystem.of("EPSG:2223", WHERE);
    private static final Envelope PLAN = new Envelope(-30, 30, -30, 30);

    /** What is said of a layer at x, y where the plan lies at planX, planY. */
    private static Optional<String> cause(double planX, double planY, double x, double y) {
        Coordinate middle = FEET.toLonLat(new Coordinate(planX, planY), WHERE);
        LocalFrame frame = LocalFrame.at(middle.x, middle.y);
        Coordinate lonLat = FEET.toLonLat(new Coordinate(x, y), WHERE);
        Feature tree = new Feature(
                Role.TREE, "T-1", new GeometryFactory().createPoint(frame.toLocal(lonLat)), Attributes.none(), WHERE);
        return Misread.cause(FEET, frame, List.of(tree), PLAN);
    }

    @Test
    void coordinatesTheWrongWayRoundAreRecognized() {
        assertThat(cause(900_000, 1_000_000, 1_000_000, 900_000))
                .contains(". Swapped, its two coordinates lie at the plan: are they the wrong way round?");
    }

    @Test
    void metresReadAsFeetAndFeetReadAsMetresAreRecognized() {
        assertThat(cause(700_000, 500_000, 700_000 * 0.3048, 500_000 * 0.3048))
                .contains(". Taken as metres, its numbers lie at the plan: is its system the one in metres?");
        assertThat(cause(700_000 * 0.3048, 500_000 * 0.3048, 700_000, 500_000))
                .contains(". Taken as feet, its numbers lie at the plan: is its system the one in feet?");
    }

    @Test
    void aLayerThatNoOtherReadingBringsHereHasNoCause() {
        assertThat(cause(700_000, 500_000, 740_000, 500_000)).isEmpty();
    }
}
