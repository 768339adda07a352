package org.fallrule.terrain.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.measure.Length;
import org.fallrule.terrain.Shape;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

class FilledGroundTest {

    static GroundGrid grid(Shape shape, double spacing) {
        return GroundGrid.of(shape, shape.extent(), spacing);
    }

    /** Sampled anew where the ground is another, the grid is what it is when all of it is sampled. */
    @Test
    void aGridOfGroundThatIsChangedInOnePlaceIsSampledThereAlone() {
        Envelope where = new Envelope(-3.1, 4.2, 1, 6.3);
        Shape before = Shape.square(20, (x, y) -> 0.01 * (x * x + y * y));
        Shape after = Shape.square(20, (x, y) -> where.contains(x, y) ? 0.3 : 0.01 * (x * x + y * y));
        GroundGrid whole = grid(after, 0.5);
        GroundGrid part = grid(before, 0.5).with(after, where);

        assertThat(part.size()).isEqualTo(whole.size());
        assertThat(IntStream.range(0, whole.size()).filter(node -> part.height(node) != whole.height(node)))
                .isEmpty();
    }

    /**
     * z = a r^2 in a square of half side L spills at the middle of its sides, at a L^2: area pi L^2, volume pi a L^4 / 2.
     * Bounds: area, half a cell's side along the shore; volume, the midpoint rule's a h^2 / 6 over the area and, in the
     * cells on the shore (no more than 2 pi L / h * sqrt 2), at most the slope there times half a cell's diagonal over a
     * cell.
     */
    @Test
    void aBowlHoldsWhatGeometrySays() {
        double a = 0.01;
        double half = 20;
        double h = 0.5;
        FilledGround filled = FilledGround.of(grid(Shape.square(half, (x, y) -> a * (x * x + y * y)), h));

        assertThat(filled.ponds()).hasSize(1);
        Pond pond = filled.pondAt(new Coordinate(3, 4)).orElseThrow();
        assertThat(pond.level().metres()).isCloseTo(4, within(1e-9));
        assertThat(pond.depth().metres()).isCloseTo(4, within(1e-9));
        assertThat(pond.lowest().distance(new Coordinate(0, 0))).isZero();
        assertThat(pond.spill().distance(new Coordinate(0, 0))).isEqualTo(half);
        double shore = 2 * Math.PI * half;
        double area = Math.PI * half * half;
        assertThat(pond.area().squareMetres()).isCloseTo(area, within(shore * h / 2));
        double bound = a * h * h / 6 * area + shore * Math.sqrt(2) / h * (2 * a * half * h * Math.sqrt(0.5)) * h * h;
        assertThat(pond.cubicMetres()).isCloseTo(Math.PI * a * Math.pow(half, 4) / 2, within(bound));
        assertThat(pond.outline().getArea()).isCloseTo(pond.area().squareMetres(), within(1e-6));
        assertThat(pond.outline().isValid()).isTrue();
        assertThat(pond.outline().getCentroid().getCoordinate().distance(new Coordinate(0, 0)))
                .isCloseTo(0, within(1e-9));
        assertThat(filled.pondAt(new Coordinate(19.5, 19.5))).isEmpty();
    }

    @Test
    void thePlacesOfAPondHaveTheirHeights() {
        FilledGround filled = FilledGround.of(grid(Shape.square(10, (x, y) -> 7 + 0.01 * (x * x + y * y)), 0.5));
        Pond pond = filled.ponds().get(0);

        assertThat(pond.level().metres()).isCloseTo(8, within(1e-9));
        assertThat(pond.depth().metres()).isCloseTo(1, within(1e-9));
        assertThat(pond.lowest().getZ()).isEqualTo(7);
        assertThat(pond.spill().getZ()).isCloseTo(8, within(1e-9));
    }

    /** Of a bowl z = r^2 / 100 what lies no more than 4 cm above the bottom is a disc of 2 m, give or take half a cell. */
    @Test
    void theBottomOfAPondIsWhatLiesAsLow() {
        FilledGround filled = FilledGround.of(grid(Shape.square(20, (x, y) -> 0.01 * (x * x + y * y)), 0.25));
        Pond pond = filled.ponds().get(0);

        assertThat(pond.bottom(new Length(0.04)).getArea()).isCloseTo(Math.PI * 4, within(2 * Math.PI * 2 * 0.25 / 2));
        // Within a millimetre are its lowest cell and the four beside it, 0.6 mm up; those at the corners lie 1.25 mm
        // up.
        assertThat(pond.bottom(new Length(0)).getArea()).isCloseTo(5 * 0.25 * 0.25, within(1e-9));
    }

    @Test
    void theLevelIsThatOfTheWaterInAPondAndOfTheGroundBesideIt() {
        FilledGround filled =
                FilledGround.of(grid(Shape.square(20, (x, y) -> 5 + 0.1 * x - (Math.hypot(x, y) < 4 ? 2 : 0)), 1));
        Pond pond = filled.pondAt(new Coordinate(0, 0)).orElseThrow();

        assertThat(filled.levelAt(new Coordinate(0.3, 0.4)).orElseThrow()).isEqualTo(pond.level());
        assertThat(filled.levelAt(new Coordinate(12.25, -7.5)).orElseThrow().metres())
                .isCloseTo(6.225, within(1e-9));
        assertThat(filled.levelAt(new Coordinate(20, 20)).orElseThrow().metres())
                .isCloseTo(7, within(1e-9));
        assertThat(filled.levelAt(new Coordinate(20.1, 0))).isEmpty();
        assertThat(filled.levelAt(new Coordinate(0, -20.1))).isEmpty();
    }

    @Test
    void aPondAroundAnIslandHasAHoleInItsOutline() {
        FilledGround filled = FilledGround.of(grid(
                Shape.square(20, (x, y) -> {
                    double r = Math.hypot(x, y);
                    return Math.abs(r - 10);
                }),
                0.5));
        Pond pond = filled.pondAt(new Coordinate(10, 0)).orElseThrow();

        assertThat(pond.level().metres()).isCloseTo(10, within(1e-9));
        assertThat(filled.pondAt(new Coordinate(0, 0))).isEmpty();
        assertThat(pond.outline()
                        .contains(new org.locationtech.jts.geom.GeometryFactory().createPoint(new Coordinate(0, 0))))
                .isFalse();
    }

    @Test
    void aPlaneHasNoPonds() {
        assertThat(FilledGround.of(grid(Shape.square(20, (x, y) -> 0.02 * x + 0.01 * y), 1))
                        .ponds())
                .isEmpty();
    }

    @Test
    void waterLeavesThroughAHole() {
        FilledGround filled = FilledGround.of(grid(
                Shape.square(20, (x, y) -> Math.hypot(x, y) < 3 ? Double.NaN : 0.1 * Math.hypot(x, y)), 1));

        assertThat(filled.ponds()).isEmpty();
        assertThat(filled.levelAt(new Coordinate(0, 0))).isEmpty();
    }

    @Test
    void gridsWithoutEndAreRefused() {
        Shape shape = Shape.square(20, (x, y) -> 1);
        assertThatThrownBy(() -> GroundGrid.of(shape, shape.extent(), 1e-6))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GroundGrid.of(shape, new Envelope(0, 19_998, 0, 9_998), 2))
                .hasMessageContaining("A grid of 5.0E7 nodes, 2.0 m apart; wanted 1 to 25000000");
        assertThatThrownBy(() -> GroundGrid.of(shape, shape.extent(), 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GroundGrid.of(shape, new Envelope(), 1)).isInstanceOf(IllegalArgumentException.class);
    }

    static Shape hills(long seed) {
        Random random = new Random(seed);
        double[] wave = IntStream.range(0, 15)
                .mapToDouble(i -> random.nextDouble(-1, 1))
                .toArray();
        return Shape.square(15, (x, y) -> {
            double z = 100 + wave[0] * x / 10 + wave[1] * y / 10;
            for (int i = 3; i + 3 < wave.length; i += 3) {
                z += wave[i] * Math.sin(wave[i + 1] * x + wave[i + 2] * y + i);
            }
            return z;
        });
    }

    @Property(tries = 40)
    void waterIsNeverBelowTheGroundNorAboveItsHighest(@ForAll long seed) {
        Shape hills = hills(seed);
        GroundGrid grid = grid(hills, 1);
        FilledGround filled = FilledGround.of(grid);
        double highest =
                IntStream.range(0, grid.size()).mapToDouble(grid::height).max().orElseThrow();

        for (int node = 0; node < grid.size(); node++) {
            assertThat(filled.level(node)).isBetween(grid.height(node), highest);
            if (filled.next(node) >= 0) {
                assertThat(filled.level(filled.next(node))).isLessThanOrEqualTo(filled.level(node));
            }
        }
        for (Pond pond : filled.ponds()) {
            assertThat(pond.depth().metres()).isPositive();
            assertThat(pond.cubicMetres())
                    .isLessThanOrEqualTo(pond.depth().metres() * pond.area().squareMetres() * (1 + 1e-12));
        }
    }

    /**
     * The definition itself, worked out by going over all nodes until none changes: a node stands as high as its ground or, if that
     * is higher, as the lowest of its neighbours (O. Planchon, F. Darboux, "A fast, simple and versatile algorithm to fill the
     * depressions of digital elevation models", Catena 46, 2002, without their least fall). Heights are rounded to make level ground.
     */
    @Property(tries = 60)
    void waterStandsAsHighAsTheLowestOfItsNeighboursOrTheGround(
            @ForAll long seed, @ForAll @IntRange(max = 60) int holes, @ForAll @IntRange(min = 1, max = 50) int step) {
        Shape hills = hills(seed);
        Random random = new Random(seed);
        GroundGrid grid = grid(
                Shape.square(
                        15,
                        (x, y) -> random.nextInt(2000) < holes
                                ? Double.NaN
                                : Math.rint(hills.elevationAt(new Coordinate(x, y))
                                                        .orElseThrow()
                                                        .metres()
                                                * step)
                                        / step),
                1);
        FilledGround filled = FilledGround.of(grid);
        double[] levels = goneOver(grid);

        for (int node = 0; node < grid.size(); node++) {
            assertThat(filled.level(node)).isEqualTo(Double.valueOf(levels[node]));
            assertThat(filled.next(node) < 0).isEqualTo(grid.isHole(node) || grid.isOnRim(node));
            if (filled.next(node) >= 0) {
                assertThat(filled.level(filled.next(node))).isLessThanOrEqualTo(filled.level(node));
                assertThat(stepsOut(filled, node)).isLessThan(grid.size());
            }
        }
    }

    private static double[] goneOver(GroundGrid grid) {
        double[] levels = IntStream.range(0, grid.size())
                .mapToDouble(node -> grid.isHole(node) || grid.isOnRim(node) ? grid.height(node) : 1e9)
                .toArray();
        boolean isChanged = true;
        while (isChanged) {
            isChanged = false;
            for (int node = 0; node < levels.length; node++) {
                for (int direction = 0; direction < Direction.COUNT; direction++) {
                    int next = grid.neighbour(node, direction);
                    double level = next < 0 ? levels[node] : Math.max(grid.height(node), levels[next]);
                    if (level < levels[node]) {
                        levels[node] = level;
                        isChanged = true;
                    }
                }
            }
        }
        return levels;
    }

    private static int stepsOut(FilledGround filled, int node) {
        int steps = 0;
        for (int at = node; filled.next(at) >= 0 && steps < 100_000; at = filled.next(at)) {
            steps++;
        }
        return steps;
    }

    /** As the flood of {@link FilledGround#drainedAt} may be the ground's own, it is held against one made anew. */
    @Property(tries = 100)
    void groundThatDrainsAtSomeNodesStandsAsHighAsIfItWereFloodedAnew(
            @ForAll long seed, @ForAll @IntRange(max = 960) int one, @ForAll @IntRange(max = 960) int other) {
        GroundGrid grid = grid(hills(seed), 1);
        int[] drains = new int[grid.size()];
        drains[one] = 1;
        drains[other] = 2;
        Flood found = FilledGround.of(grid).drainedAt(drains);
        Flood anew = new Flood(grid, node -> drains[node] > 0);

        for (int node = 0; node < grid.size(); node++) {
            assertThat(found.level(node)).isEqualTo(anew.level(node));
        }
    }

    @Property(tries = 20)
    void aPlanMovedOrTurnedByAQuarterHasTheSamePonds(@ForAll long seed) {
        Shape hills = hills(seed);
        Shape moved = new Shape(new Envelope(985, 1015, -215, -185), hills.moved(Math.PI / 2, 1000, -200));

        FilledGround one = FilledGround.of(grid(hills, 1));
        FilledGround other = FilledGround.of(grid(moved, 1));
        double[] volumes = one.ponds().stream()
                .mapToDouble(Pond::cubicMetres)
                .filter(v -> v > 1e-6)
                .sorted()
                .toArray();
        double[] others = other.ponds().stream()
                .mapToDouble(Pond::cubicMetres)
                .filter(v -> v > 1e-6)
                .sorted()
                .toArray();
        assertThat(others).containsExactly(volumes, within(1e-6));
    }
}
