package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.BUILDING;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.STREET;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import java.util.Optional;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class SurfaceAboveTest {
    /** A drive from x = 0 to 20 ft with a walk across it from x = 15 to 19 ft. */
    private static final PlanInFeet DRIVE_AND_WALK = plan().with(
                    DRIVE, "D-1", "POLYGON ((0 0, 20 0, 20 20, 0 20, 0 0))")
            .with(WALK, "W-1", "POLYGON ((15 -9, 19 -9, 19 29, 15 29, 15 -9))");

    private static Optional<String> at(PlanInFeet plan, double x, double y) {
        return new SurfaceAbove(plan.site()).at(new Coordinate(x * 0.3048, y * 0.3048));
    }

    @Test
    void insideOfASurfaceItIsNamed() {
        assertThat(at(DRIVE_AND_WALK, 5, 5)).contains("drive");
        assertThat(at(DRIVE_AND_WALK, 17, -5)).contains("walk");
    }

    @Test
    void onTheEdgeTheSurfaceCounts() {
        assertThat(at(DRIVE_AND_WALK, 0, 5)).contains("drive");
    }

    @Test
    void whereAWalkCrossesADriveItIsDrive() {
        assertThat(at(DRIVE_AND_WALK, 17, 5)).contains("drive");
    }

    @Test
    void underNoneOfThemItIsLawn() {
        assertThat(at(DRIVE_AND_WALK, 50, 50)).contains("lawn");
        assertThat(at(plan().absent(DRIVE).absent(WALK), 50, 50)).contains("lawn");
        assertThat(at(plan().empty(DRIVE).absent(WALK), 50, 50)).contains("lawn");
    }

    @Test
    void whereWalksOrDrivesAreNotSuppliedNothingIsKnownToBeLawn() {
        assertThat(at(plan().absent(DRIVE), 50, 50)).isEmpty();
        assertThat(at(plan().absent(WALK), 50, 50)).isEmpty();
        assertThat(at(plan().absent(WALK).with(BUILDING, "B-1", "POLYGON ((0 0, 9 0, 9 9, 0 0))"), 8, 4))
                .contains("building");
    }

    @Test
    void onlyTheLayersThatThePlanLeavesOutAreAskedFor() {
        assertThat(new SurfaceAbove(plan().absent(DRIVE).site()).settledBy())
                .isEqualTo("supply the walk layer, or list walk under absent in site.yaml if there is none");
        assertThat(new SurfaceAbove(plan().site()).settledBy())
                .isEqualTo(
                        "supply the drive and walk layers, or list them under absent in site.yaml if there are none");
    }

    @Test
    void streetsThatAreNotSuppliedLeaveTheLotKnown() {
        assertThat(at(DRIVE_AND_WALK.with(STREET, "S-1", "POLYGON ((90 0, 99 0, 99 9, 90 0))"), 98, 4))
                .contains("street");
        assertThat(at(DRIVE_AND_WALK, 98, 4)).contains("lawn");
    }

    @Test
    void theBreaksAlongALineAreTheEdgesItCrosses() {
        var line = new GeometryFactory()
                .createLineString(new Coordinate[] {new Coordinate(-0.3048, 1.524), new Coordinate(9.144, 1.524)});
        List<Double> feet = new SurfaceAbove(DRIVE_AND_WALK.site())
                .breaksAlong(line).stream()
                        .map(metres -> metres / 0.3048)
                        .sorted()
                        .toList();

        assertThat(feet).hasSize(4);
        assertThat(feet.get(0)).isCloseTo(1, within(1e-9));
        assertThat(feet.get(1)).isCloseTo(16, within(1e-9));
        assertThat(feet.get(2)).isCloseTo(20, within(1e-9));
        assertThat(feet.get(3)).isCloseTo(21, within(1e-9));
    }
}
