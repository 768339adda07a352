package org.fallrule.check.statement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRIVE;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.STREET;
import static org.fallrule.site.Role.WALK;

import java.util.List;
import org.fallrule.check.Need;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class AttributeHoldsTest {
    /** Common practice: polyethylene cannot be solvent welded. */
    private static final String JOINT = """
            of: pipe
            must: NOT (material IN ('hdpe_dual_wall', 'polyethylene') AND joint IN ('solvent_weld', 'glued'))""";

    private static final String UNDER_WHEELS = """
            of: pipe
            must: above NOT IN ('drive', 'street') OR wall = 'double'""";

    /**
     * 2010 ADA Standards for Accessible Design, 302.3: openings do not let a sphere of more than 1/2 inch pass.
     */
    private static final String GRATE = """
            of: inlet
            of_where: kind <> 'downspout'
            must: stands_in <> 'walk' OR grate_opening_in <= 0.5""";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new AttributeHolds(), terms);
    }

    private static PlanInFeet pipe(String... attributes) {
        return plan().with(PIPE, "P-1", "LINESTRING (0 0, 40 0)", attributes);
    }

    @Test
    void aJointThatTheMaterialCannotTakeFailsAndSaysWhatIsGiven() {
        assertThat(check(pipe("material = polyethylene", "joint = solvent_weld"), JOINT))
                .containsExactly("fails P-1; joint solvent_weld, material polyethylene; asked is NOT (material IN"
                        + " ('hdpe_dual_wall', 'polyethylene') AND joint IN ('solvent_weld', 'glued'))");
        assertThat(check(pipe("material = hdpe_dual_wall", "joint = glued"), JOINT))
                .singleElement()
                .asString()
                .startsWith("fails P-1; joint glued, material hdpe_dual_wall;");
    }

    @Test
    void aJointThatItCanTakeMeets() {
        assertThat(check(pipe("material = polyethylene", "joint = gasket"), JOINT))
                .containsExactly("meets P-1");
        assertThat(check(pipe("material = polyethylene", "joint = adhesive_wrap"), JOINT))
                .containsExactly("meets P-1");
        assertThat(check(pipe("material = pvc_sch40", "joint = solvent_weld"), JOINT))
                .containsExactly("meets P-1");
    }

    @Test
    void whatThePlanDoesNotSayIsNamed() {
        assertThat(check(pipe("material = polyethylene"), JOINT))
                .containsExactly("cannot_tell P-1; lacks joint of pipe P-1");
        assertThat(check(pipe(), JOINT)).containsExactly("cannot_tell P-1; lacks joint, material of pipe P-1");
    }

    @Test
    void whatThePlanDoesNotSayIsOfNoAccountWhereTheRestDecides() {
        assertThat(check(pipe("material = pvc_sdr35"), JOINT)).containsExactly("meets P-1");
        assertThat(check(pipe("joint = fused"), JOINT)).containsExactly("meets P-1");
    }

    @Test
    void aFeatureThatMayNotBeMeantIsNotHeldAgainstThePlan() {
        String ofFourInch = JOINT + "\nof_where: diameter_in = 4";

        assertThat(check(pipe("material = polyethylene", "joint = glued"), ofFourInch))
                .containsExactly("cannot_tell P-1; lacks diameter of pipe P-1");
        assertThat(check(pipe("material = polyethylene", "joint = glued", "diameter = 6 in"), ofFourInch))
                .isEmpty();
    }

    // What lies above a pipe

    private static PlanInFeet underDriveFrom10To20(String... attributes) {
        return pipe(attributes).empty(WALK).with(DRIVE, "D-1", "POLYGON ((10 -5, 20 -5, 20 5, 10 5, 10 -5))");
    }

    @Test
    void aSingleWallUnderADriveFailsOnThatStretchAlone() {
        assertThat(check(underDriveFrom10To20("wall = single"), UNDER_WHEELS))
                .containsExactly(
                        "fails P-1; above drive, wall single from station 0+10.0 to 0+20.0; asked is above NOT IN"
                                + " ('drive', 'street') OR wall = 'double'");
    }

    @Test
    void theStretchIsWhatTheMapShows() {
        assertThat(underDriveFrom10To20("wall = single").observe(new AttributeHolds(), UNDER_WHEELS))
                .singleElement()
                .satisfies(seen -> assertThat(seen.where().orElseThrow().getLength())
                        .isCloseTo(10 * 0.3048, org.assertj.core.api.Assertions.within(1e-9)));
    }

    @Test
    void aDoubleWallUnderADriveAndASingleWallUnderLawnMeet() {
        assertThat(check(underDriveFrom10To20("wall = double"), UNDER_WHEELS)).containsExactly("meets P-1");
        assertThat(check(pipe("wall = single").absent(DRIVE).absent(WALK), UNDER_WHEELS))
                .containsExactly("meets P-1");
    }

    @Test
    void aPipeThatEndsAtTheEdgeOfADriveDoesNotLieUnderIt() {
        PlanInFeet plan =
                pipe("wall = single").empty(WALK).with(DRIVE, "D-1", "POLYGON ((40 -5, 50 -5, 50 5, 40 5, 40 -5))");

        assertThat(check(plan, UNDER_WHEELS)).containsExactly("meets P-1");
    }

    @Test
    void underTwoSurfacesEachFailsOnItsOwn() {
        PlanInFeet plan = underDriveFrom10To20("wall = single")
                .with(STREET, "ST-1", "POLYGON ((30 -5, 40 -5, 40 5, 30 5, 30 -5))");

        assertThat(check(plan, UNDER_WHEELS))
                .extracting(line -> line.substring(0, line.indexOf("; asked")))
                .containsExactly(
                        "fails P-1; above drive, wall single from station 0+10.0 to 0+20.0",
                        "fails P-1; above street, wall single from station 0+30.0 to 0+40.0");
    }

    @Test
    void whereThePlanIsSilentOfDrivesThatIsWhatIsMissing() {
        assertThat(check(pipe("wall = single"), UNDER_WHEELS))
                .containsExactly("cannot_tell P-1; lacks what lies above pipe P-1 from station 0+00.0 to 0+40.0");
        assertThat(check(pipe("wall = double"), UNDER_WHEELS)).containsExactly("meets P-1");
        assertThat(check(underDriveFrom10To20(), UNDER_WHEELS))
                .containsExactly("cannot_tell P-1; lacks wall of pipe P-1");
    }

    // A grate in a walk

    private static PlanInFeet basinInWalk(String... attributes) {
        return plan().with(INLET, "CB-1", "POINT (5 5)", attributes)
                .with(WALK, "W-1", "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))")
                .empty(DRIVE);
    }

    @Test
    void aGrateInAWalkWithOpeningsUpToHalfAnInchMeets() {
        assertThat(check(basinInWalk("kind = basin", "grate_opening = 3/8 in"), GRATE))
                .containsExactly("meets CB-1");
        assertThat(check(basinInWalk("kind = basin", "grate_opening = 0.5 in"), GRATE))
                .containsExactly("meets CB-1");
        assertThat(check(basinInWalk("kind = basin", "grate_opening = 12.7 mm"), GRATE))
                .containsExactly("meets CB-1");
    }

    @Test
    void aGrateInAWalkWithWiderOpeningsFails() {
        assertThat(check(basinInWalk("kind = basin", "grate_opening = 5/8 in"), GRATE))
                .containsExactly("fails CB-1; grate opening 0.6 in, stands in walk; asked is stands_in <> 'walk' OR"
                        + " grate_opening_in <= 0.5");
    }

    @Test
    void aGrateInTheLawnMayHaveAnyOpenings() {
        PlanInFeet beside = plan().with(INLET, "CB-1", "POINT (15 5)", "kind = basin", "grate_opening = 2 in")
                .with(WALK, "W-1", "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))")
                .empty(DRIVE);

        assertThat(check(beside, GRATE)).containsExactly("meets CB-1");
    }

    @Test
    void aGrateOnTheEdgeOfAWalkStandsInIt() {
        PlanInFeet onEdge = plan().with(INLET, "CB-1", "POINT (10 5)", "kind = basin", "grate_opening = 2 in")
                .with(WALK, "W-1", "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))")
                .empty(DRIVE);

        assertThat(check(onEdge, GRATE)).singleElement().asString().startsWith("fails CB-1");
    }

    @Test
    void aGrateInAWalkOfUnknownOpeningsCannotBeTold() {
        assertThat(check(basinInWalk("kind = basin"), GRATE))
                .containsExactly("cannot_tell CB-1; lacks grate_opening of inlet CB-1");
        assertThat(check(basinInWalk("kind = downspout"), GRATE)).isEmpty();
    }

    @Test
    void whereThePlanIsSilentOfWalksItCannotBeToldWhatTheGrateStandsIn() {
        PlanInFeet plan = plan().with(INLET, "CB-1", "POINT (5 5)", "kind = basin", "grate_opening = 1 in");

        assertThat(check(plan, GRATE)).containsExactly("cannot_tell CB-1; lacks what inlet CB-1 stands in");
    }

    @Test
    void itNeedsTheLayerThatItAsksOf() {
        assertThat(new AttributeHolds().needs(PlanInFeet.terms(new AttributeHolds(), JOINT)))
                .containsExactly(new Need.OfLayer(PIPE));
    }
}
