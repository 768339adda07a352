package org.fallrule.proposal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.locality.Laying;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Bends on an open lot; places in metres. Lengths are those of plane trigonometry. */
class EasedBendsTest {
    private static final RuleBook BOOK =
            new RuleLibrary(Path.of("rules"), "rules").load("saltmeadow", Optional.empty());
    private static final double ROOM = 0.3;

    private final PlanInFeet plan = PlanInFeet.plan()
            .with(Role.LOT, "L-1", "POLYGON ((-100 -100, 200 -100, 200 200, -100 200, -100 -100))", "own = true")
            .with(Role.INLET, "CB-1", "POINT (0 0)", "kind = basin")
            .spots("-150 -150 100, 250 -150 100, 250 250 99, -150 250 99");

    private Field field(Geometry... blocked) {
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), BOOK.locality());
        Laying laying = BOOK.locality().laying();
        Stock stock = new Stock(laying);
        LineRules rules = new LineRules(analysis, List.of(), false);
        return new Field(
                analysis,
                List.of(),
                rules,
                rules,
                new Ground(analysis),
                stock,
                laying,
                stock.smallest(),
                false,
                List.of(blocked));
    }

    private Drain drain(double... places) {
        List<Coordinate> axis = new ArrayList<>();
        for (int i = 0; i < places.length; i += 2) {
            axis.add(new Coordinate(places[i], places[i + 1]));
        }
        Feature inlet = plan.site().features(Role.INLET).get(0);
        return Drain.of(inlet, axis);
    }

    private static List<Long> bends(Drain drain) {
        List<Coordinate> axis = drain.reaches().get(0).axis();
        List<Long> bends = new ArrayList<>();
        for (int i = 1; i + 1 < axis.size(); i++) {
            bends.add(Math.round(10
                    * Math.toDegrees(Math.abs(Angle.diff(
                            Angle.angle(axis.get(i - 1), axis.get(i)), Angle.angle(axis.get(i), axis.get(i + 1)))))));
        }
        return bends;
    }

    private static double length(Drain drain) {
        return drain.reaches().get(0).length();
    }

    @Test
    void aJogIsLaidAtHalfItsAngle() {
        Drain jog = drain(0, 0, 10, 0, 12, 2, 22, 2);
        Drain eased = EasedBends.of(jog, field(), ROOM);

        assertThat(bends(eased)).containsExactly(225L, 225L);
        assertThat(length(jog) - length(eased))
                .isCloseTo(Math.sqrt(8) * (2 - Math.sin(Math.PI / 4) / Math.sin(Math.PI / 8)), within(1e-9));
        assertThat(eased.places()).isEqualTo(jog.places());
    }

    @Test
    void theFirstBendFromAnInletIsHalved() {
        Drain eased = EasedBends.of(drain(0, 0, 3, 0, 13, 10), field(), ROOM);

        assertThat(bends(eased)).containsExactly(225L);
        assertThat(length(eased)).isCloseTo(6 * Math.cos(Math.PI / 8) + Math.sqrt(200) - 3, within(1e-9));
    }

    @Test
    void theLastBendBeforeTheOutfallIsHalved() {
        assertThat(bends(EasedBends.of(drain(0, 0, 10, 10, 13, 10), field(), ROOM)))
                .containsExactly(225L);
    }

    @Test
    void whereABendHasNoRoomItStays() {
        assertThat(bends(EasedBends.of(drain(0, 0, 10, 0, 12, 2, 22, 2), field(), 9)))
                .containsExactly(450L, 450L);
    }

    @Test
    void whereTheGroundIsBarredTheBendStays() {
        Geometry stone = new GeometryFactory().toGeometry(new Envelope(12.2, 12.8, 1.5, 1.9));

        assertThat(bends(EasedBends.of(drain(0, 0, 10, 0, 12, 2, 22, 2), field(stone), ROOM)))
                .containsExactly(450L, 450L);
    }

    @Test
    void twoBendsTheSameWayAreNoJog() {
        assertThat(bends(EasedBends.of(drain(0, 0, 10, 0, 12, 2, 12, 6), field(), ROOM)))
                .containsExactly(450L, 450L);
    }

    @Test
    void aReachThatEndsAtAWyeComesThereAsItDid() {
        Drain drain = drain(0, 0, 10, 0, 20, 10, 40, 10);
        Drain parted = drain.parted(drain.reaches().get(0), 2, new Coordinate(12, 2));
        Drain eased = EasedBends.of(parted, field(), ROOM);

        Drain.Reach upper = eased.leaving(0).orElseThrow();
        Coordinate before = upper.axis().get(upper.axis().size() - 2);
        assertThat(Math.toDegrees(Angle.angle(before, new Coordinate(12, 2)))).isCloseTo(45, within(1e-6));
    }
}
