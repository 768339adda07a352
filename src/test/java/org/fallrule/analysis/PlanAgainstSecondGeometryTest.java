package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;

import com.esri.core.geometry.Geometry;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.place.Outside;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Area;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

/**
 * Distances, lengths inside of areas, crossings and areas of ten thousand random plans, by the program and by a second library of
 * geometry. That one snaps what lies nearer than its tolerance, which is far below a micrometre here.
 */
class PlanAgainstSecondGeometryTest {
    private static final int PLANS = 10_000;
    /** Metres, and square metres. */
    private static final double MICROMETRE = 1e-6;

    private static LongStream seeds() {
        return LongStream.range(0, PLANS).parallel();
    }

    @Test
    void plansDistanceFromPipeToBuildingIsTheSame() {
        seeds().forEach(seed -> {
            RandomPlan random = new RandomPlan(seed);
            List<Coordinate> pipe = random.line();
            List<Coordinate> house = random.ring();
            double diameter = random.between(3, 18);
            Site site = plan().with(Role.PIPE, "P-1", RandomPlan.line(pipe), "outside_diameter = " + diameter + " in")
                    .with(Role.BUILDING, "B-1", RandomPlan.polygon(house))
                    .site();

            PlanDistance ours = PlanDistance.between(one(site, Role.PIPE), one(site, Role.BUILDING));

            double theirs = SecondGeometry.distance(SecondGeometry.line(pipe), SecondGeometry.polygon(house))
                    - diameter / 2 * Unit.INCH.toSi();
            assertThat(ours.gap().metres()).as("plan %d", seed).isCloseTo(theirs, within(MICROMETRE));
        });
    }

    @Test
    void lengthOfPipeInsideOfAnAreaIsTheSame() {
        long inside = seeds().filter(seed -> {
                    RandomPlan random = new RandomPlan(seed);
                    List<Coordinate> pipe = random.line();
                    List<Coordinate> area = random.ring();
                    PlanInFeet plan = plan().with(Role.PIPE, "P-1", RandomPlan.line(pipe))
                            .with(Role.EASEMENT, "E-1", RandomPlan.polygon(area));

                    Observation ours = plan.observe(
                                    new Outside(), "subject: pipe\narea: easement\ninside_at_most: 0 ft")
                            .get(0);

                    double theirs =
                            SecondGeometry.commonLength(SecondGeometry.line(pipe), SecondGeometry.polygon(area));
                    Quantity length = ours.measured().orElseThrow().value();
                    assertThat(length.si()).as("plan %d", seed).isCloseTo(theirs, within(MICROMETRE));
                    return theirs > 0;
                })
                .count();
        assertThat(inside).as("plans whose pipe runs through the area").isGreaterThan(PLANS / 10);
    }

    @Test
    void pipesAndUtilitiesCrossAtTheSamePlaces() {
        long crossings = seeds().map(seed -> {
                    RandomPlan random = new RandomPlan(seed);
                    List<Coordinate> pipe = random.line().subList(0, 2);
                    List<Coordinate> utility = random.line();
                    SiteAnalysis analysis = plan().with(Role.PIPE, "P-1", RandomPlan.line(pipe))
                            .with(Role.UTILITY, "U-1", RandomPlan.line(utility))
                            .analysis();
                    PipeRun run = analysis.network().runs().get(0);

                    List<Coordinate> ours = Crossing.of(run, one(analysis.site(), Role.UTILITY)).stream()
                            .map(Crossing::place)
                            .sorted(Comparator.naturalOrder())
                            .toList();

                    List<Coordinate> theirs =
                            SecondGeometry.crossings(SecondGeometry.line(pipe), SecondGeometry.line(utility)).stream()
                                    .sorted(Comparator.naturalOrder())
                                    .toList();
                    assertThat(ours).as("plan %d", seed).hasSameSizeAs(theirs);
                    for (int i = 0; i < ours.size(); i++) {
                        assertThat(ours.get(i).distance(theirs.get(i)))
                                .as("plan %d", seed)
                                .isLessThan(MICROMETRE);
                    }
                    return ours.size();
                })
                .sum();
        assertThat(crossings).as("crossings in all").isGreaterThan(PLANS / 2);
    }

    @Test
    void areasOfRoofDriveAndLawnThatDrainToAnInletAreTheSame() {
        seeds().forEach(seed -> {
            RandomPlan random = new RandomPlan(seed);
            List<Coordinate> area = random.ring();
            List<Coordinate> house = random.ring();
            List<Coordinate> drive = random.ring();
            PlanInFeet plan = plan().with(Role.DRAINAGE_AREA, "DA-1", RandomPlan.polygon(area), "drains_to = CB-1")
                    .with(Role.INLET, "CB-1", RandomPlan.point(random.place()), "kind = basin")
                    .with(Role.BUILDING, "B-1", RandomPlan.polygon(house))
                    .with(Role.DRIVE, "D-1", RandomPlan.polygon(drive))
                    .empty(Role.WALK);

            Site site = plan.site();
            Map<String, Area> ours =
                    new DrawnAreas(site, Set.of(), Optional.empty(), true).surfaces(one(site, Role.DRAINAGE_AREA));

            Geometry whole = SecondGeometry.polygon(area);
            Geometry offRoof = SecondGeometry.without(whole, SecondGeometry.polygon(house));
            Geometry lawn = SecondGeometry.without(offRoof, SecondGeometry.polygon(drive));
            assertSame(seed, ours, "roof", SecondGeometry.commonArea(whole, SecondGeometry.polygon(house)));
            assertSame(seed, ours, "drive", SecondGeometry.commonArea(offRoof, SecondGeometry.polygon(drive)));
            assertSame(seed, ours, "lawn", SecondGeometry.area(lawn));
        });
    }

    private static void assertSame(long seed, Map<String, Area> ours, String surface, double theirs) {
        assertThat(ours.getOrDefault(surface, new Area(0)).squareMetres())
                .as("%s of plan %d", surface, seed)
                .isCloseTo(theirs, within(1e-5));
    }

    private static Feature one(Site site, Role role) {
        return site.features(role).get(0);
    }
}
