package org.fallrule.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.util.AffineTransformation;

/** What holds for any ground. */
class GroundPropertiesTest {

    private static Survey randomSpots(long seed, int count, AffineTransformation move) {
        Random random = new Random(seed);
        Survey survey = new Survey();
        for (int i = 0; i < count; i++) {
            Coordinate place = new Coordinate(random.nextDouble(-50, 50), random.nextDouble(-50, 50));
            move.transform(place, place);
            survey.spot(place.x, place.y, random.nextDouble(90, 110));
        }
        return survey;
    }

    @Property(tries = 60)
    void triangulatedHeightsStayWithinTheSurveyed(@ForAll long seed, @ForAll @IntRange(min = 3, max = 200) int count) {
        Optional<GroundSurface> ground =
                randomSpots(seed, count, new AffineTransformation()).built().ground();
        Random random = new Random(~seed);
        for (int i = 0; i < 50; i++) {
            Coordinate place = new Coordinate(random.nextDouble(-60, 60), random.nextDouble(-60, 60));
            ground.flatMap(surface -> surface.elevationAt(place))
                    .map(Elevation::metres)
                    .ifPresent(z -> assertThat(z).isBetween(90 - 1e-6, 110 + 1e-6));
        }
    }

    @Property(tries = 60)
    void aPlanMovedAndTurnedHasTheSameGround(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 6.28) double turn,
            @ForAll @DoubleRange(min = -1000, max = 1000) double east) {
        AffineTransformation move = AffineTransformation.rotationInstance(turn).translate(east, -east / 3);
        GroundSurface one = randomSpots(seed, 60, new AffineTransformation()).ground();
        GroundSurface other = randomSpots(seed, 60, move).ground();
        Random random = new Random(~seed);
        for (int i = 0; i < 20; i++) {
            Coordinate place = new Coordinate(random.nextDouble(-30, 30), random.nextDouble(-30, 30));
            Optional<Elevation> here = one.elevationAt(place);
            Optional<Elevation> there = other.elevationAt(move.transform(place, new Coordinate()));
            assertThat(there.isPresent()).isEqualTo(here.isPresent());
            here.ifPresent(z -> assertThat(there.orElseThrow().metres()).isCloseTo(z.metres(), within(1e-6)));
            one.gradeAt(place)
                    .ifPresent(grade -> assertThat(other.gradeAt(move.transform(place, new Coordinate()))
                                    .orElseThrow()
                                    .slope()
                                    .ratio())
                            .isCloseTo(
                                    grade.slope().ratio(),
                                    within(1e-5 * (1 + grade.slope().ratio()))));
        }
    }

    @Property(tries = 60)
    void rasterHeightsStayWithinTheirFourCells(
            @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 6.28) double turn) {
        Shape noise = Shape.square(40, (x, y) -> 100 + new Random(Double.hashCode(x * 31 + y) ^ seed).nextDouble(5));
        RasterGround ground = new RasterGround(noise.raster(2, turn));
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            Coordinate place = new Coordinate(random.nextDouble(-50, 50), random.nextDouble(-50, 50));
            ground.elevationAt(place).ifPresent(z -> assertThat(z.metres()).isBetween(100.0, 105.0));
        }
    }
}
