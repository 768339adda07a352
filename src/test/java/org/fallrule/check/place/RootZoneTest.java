package org.fallrule.check.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.TREE;

import java.util.List;
import org.fallrule.check.Need;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class RootZoneTest {
    /** Vancouver (Washington) Municipal Code 20.170.100: 1 ft of radius to the inch of trunk at breast height. */
    private static final String CLEAR = """
            of: tree
            radius_per_inch: 1 ft
            radius_at_least: 6 ft
            inside_at_most: 0 ft""";

    private static final String NOT_PERFORATED =
            CLEAR.replace("0 ft", "0 ft when perforated = true") + "\ninside_at_most: none";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new RootZone(), terms);
    }

    /** A tree at the origin and a straight pipe that passes it at a distance. */
    private static PlanInFeet pipePassing(double feet, String... ofPipe) {
        return plan().with(PIPE, "P-1", "LINESTRING (-40 " + feet + ", 40 " + feet + ")", ofPipe);
    }

    private static PlanInFeet tenInchTree(PlanInFeet plan) {
        return plan.with(TREE, "T-1", "POINT (0 0)", "trunk_diameter = 10 in");
    }

    @Test
    void aPipeThroughARootZoneFailsByItsLengthInside() {
        // 3-4-5: 6 ft from the trunk a circle of 10 ft radius is 16 ft wide
        assertThat(check(tenInchTree(pipePassing(6)), CLEAR))
                .containsExactly("fails P-1 to T-1: 16.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
        assertThat(check(tenInchTree(pipePassing(0)), CLEAR))
                .containsExactly("fails P-1 to T-1: 20.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void aPipeThatTouchesTheRootZoneMeets() {
        assertThat(check(tenInchTree(pipePassing(10)), CLEAR))
                .containsExactly("meets P-1 to T-1: 10.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void aPipeOutsideMeets() {
        assertThat(check(tenInchTree(pipePassing(12)), CLEAR))
                .containsExactly("meets P-1 to T-1: 12.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void aLengthExactlyAtItsLimitMeets() {
        String sixteen = CLEAR.replace("inside_at_most: 0 ft", "inside_at_most: 16 ft");

        assertThat(check(tenInchTree(pipePassing(8)), sixteen))
                .containsExactly("meets P-1 to T-1: 12.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
        assertThat(check(tenInchTree(pipePassing(6)), sixteen))
                .containsExactly("meets P-1 to T-1: 16.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
        assertThat(check(tenInchTree(pipePassing(5)), sixteen))
                .containsExactly("fails P-1 to T-1: 17.32 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void aThinTreeHasTheLeastRadius() {
        PlanInFeet sapling = pipePassing(5).with(TREE, "T-1", "POINT (0 0)", "trunk_diameter = 2 in");

        assertThat(check(sapling, CLEAR))
                .containsExactly(
                        "fails P-1 to T-1: 6.63 ft; root zone of 6.00 ft radius (trunk 2.0 in, the least counts)");
    }

    @Test
    void aStatedRadiusComesBeforeTheTrunkAndTheCrownAfterIt() {
        PlanInFeet stated =
                pipePassing(12).with(TREE, "T-1", "POINT (0 0)", "trunk_diameter = 10 in", "root_radius = 15 ft");
        PlanInFeet crown = pipePassing(12).with(TREE, "T-1", "POINT (0 0)", "canopy_radius = 15 ft");

        assertThat(check(stated, CLEAR))
                .containsExactly("fails P-1 to T-1: 18.00 ft; root zone of 15.00 ft radius (as the plan gives it)");
        assertThat(check(crown, CLEAR))
                .containsExactly(
                        "fails P-1 to T-1: 18.00 ft; root zone of 15.00 ft radius (its crown's, the trunk is not given)");
    }

    @Test
    void aTreeOfUnknownSizeCannotBeTold() {
        assertThat(check(pipePassing(30).with(TREE, "T-1", "POINT (0 0)"), CLEAR))
                .containsExactly("cannot_tell T-1; lacks trunk_diameter of tree T-1");
    }

    @Test
    void perforatedPipeFailsWhereSolidPipeIsNotAsked() {
        assertThat(check(tenInchTree(pipePassing(6, "perforated = true")), NOT_PERFORATED))
                .containsExactly("fails P-1 to T-1: 16.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
        assertThat(check(tenInchTree(pipePassing(6, "perforated = false")), NOT_PERFORATED))
                .containsExactly("meets P-1 to T-1: 6.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void whetherAPipeIsPerforatedMattersOnlyInsideOfARootZone() {
        assertThat(check(tenInchTree(pipePassing(6)), NOT_PERFORATED))
                .containsExactly("cannot_tell P-1 to T-1; lacks perforated of pipe P-1, on which the limit depends;"
                        + " root zone of 10.00 ft radius (trunk 10.0 in)");
        assertThat(check(tenInchTree(pipePassing(12)), NOT_PERFORATED))
                .containsExactly("meets P-1 to T-1: 12.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void nearerToTheEdgeOfTheZoneThanTheSurveyIsAccurateItIsBorderline() {
        assertThat(check(tenInchTree(pipePassing(10.05)).surveyedTo(0.1, 0), CLEAR))
                .containsExactly("borderline P-1 to T-1: 0.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
        assertThat(check(tenInchTree(pipePassing(10.15)).surveyedTo(0.1, 0), CLEAR))
                .containsExactly("meets P-1 to T-1: 10.15 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }

    @Test
    void itNeedsPipesAndTrees() {
        assertThat(new RootZone().needs(PlanInFeet.terms(new RootZone(), CLEAR)))
                .containsExactly(new Need.OfLayer(PIPE), new Need.OfLayer(TREE));
    }

    @Test
    void ofPipesThatAllKeepClearTheNearestIsTold() {
        PlanInFeet plan = tenInchTree(pipePassing(30).with(PIPE, "P-2", "LINESTRING (-40 12, 40 12)"))
                .with(PIPE, "P-3", "LINESTRING (-40 20, 40 20)");

        assertThat(check(plan, CLEAR))
                .containsExactly("meets P-2 to T-1: 12.00 ft; root zone of 10.00 ft radius (trunk 10.0 in)");
    }
}
