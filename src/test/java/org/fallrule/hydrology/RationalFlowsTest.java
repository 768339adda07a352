package org.fallrule.hydrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydrology.Rains.minutes;
import static org.fallrule.hydrology.Rains.runoff;
import static org.fallrule.hydrology.Rains.squareFeet;
import static org.fallrule.hydrology.Rains.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fallrule.measure.Area;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;

@SuppressWarnings("NullAway") // what is missing fails the test
class RationalFlowsTest implements MethodContract {
    private static final DesignStorm STORM = Rains.storm(Rains.NORTH_CAROLINA_10_YR, 5);

    @Override
    public Method method() {
        return RationalFlows.METHOD;
    }

    @Override
    public double ours(Given given) {
        Catchment[] places = IntStream.rangeClosed(1, 5)
                .mapToObj(i -> new Catchment(
                        "I-" + i,
                        Optional.of(
                                new CompositeRunoff(new Area(given.area("roof").squareMetres() / 5), given.ratio("C"))),
                        minutes(0),
                        Optional.of("OF"),
                        minutes(0)))
                .toArray(Catchment[]::new);
        places = Stream.concat(Stream.of(places), Stream.of(outfall())).toArray(Catchment[]::new);
        DesignStorm storm = Rains.storm(table(5, given.intensity("i").in(Unit.INCH_PER_HOUR)), 5);
        String at = given.what().equals("flow of one inlet of five") ? "I-1" : "OF";
        return given.in(at(flows(storm, places), at).map(GatheredFlow::flow));
    }

    @Test
    void areasAddUpAndTheLongestTimeCounts() {
        Map<String, Answer<GatheredFlow>> flows =
                flows(STORM, inlet("A", 4000, 12, "B", 1), inlet("B", 4000, 6, "OF", 2), outfall());
        GatheredFlow atB = at(flows, "B").value().orElseThrow();
        GatheredFlow atOutfall = at(flows, "OF").value().orElseThrow();

        assertThat(atB.runoff().area().in(Unit.SQUARE_FOOT)).isCloseTo(8000, within(1e-6));
        assertThat(atB.longest().in(Unit.MINUTE)).isCloseTo(13, within(1e-9));
        assertThat(atOutfall.longest().in(Unit.MINUTE)).isCloseTo(15, within(1e-9));
        assertThat(atOutfall.intensity().in(Unit.INCH_PER_HOUR)).isCloseTo(4.81, within(1e-9));
    }

    @Test
    void aSmallSlowAreaDoesNotTakeAwayFromALargeQuickOne() {
        Map<String, Answer<GatheredFlow>> flows =
                flows(STORM, inlet("lawn", 100, 60, "roof", 0), inlet("roof", 3000, 5, "OF", 0), outfall());
        GatheredFlow atRoof = at(flows, "roof").value().orElseThrow();
        double roofAlone = cubicFeet(flows(STORM, inlet("roof", 3000, 5, "OF", 0), outfall()), "roof");

        assertThat(atRoof.flow().in(Unit.CUBIC_FOOT_PER_SECOND)).isCloseTo(roofAlone, within(1e-12));
        assertThat(atRoof.fromPart()).contains("roof");
        assertThat(at(flows, "OF").value().orElseThrow().fromPart()).contains("roof");
        assertThat(at(flows, "lawn").value().orElseThrow().fromPart()).isEmpty();
    }

    @Test
    void aTimeBeyondTheTableLeavesThePlaceAndAllBelowItWithoutAnAnswer() {
        Map<String, Answer<GatheredFlow>> flows = flows(
                STORM,
                inlet("A", 4000, 61, "B", 0),
                inlet("B", 4000, 5, "OF", 0),
                inlet("C", 10, 5, "OF", 0),
                outfall());
        String why = "outside the table: 61 min, the table ends at 60 min";

        assertThat(at(flows, "A").why()).isEqualTo(why);
        assertThat(at(flows, "B").why()).isEqualTo(why);
        assertThat(at(flows, "OF").why()).isEqualTo(why);
        assertThat(at(flows, "C").value()).isPresent();
    }

    @Test
    void aPlaceThatNothingDrainsToHasNoFlowAndHarmsNobody() {
        Catchment dry = new Catchment("dry", Optional.empty(), minutes(0), Optional.of("A"), minutes(0));
        Map<String, Answer<GatheredFlow>> flows = flows(STORM, dry, inlet("A", 4000, 5, "OF", 0), outfall());

        assertThat(at(flows, "dry").why()).isEqualTo("no area drains here");
        assertThat(at(flows, "OF").value()).isPresent();
    }

    @Test
    void whatIsNoDrainIsRefusedInWords() {
        assertThat(RationalFlows.of(List.of(inlet("A", 1, 5, "B", 0), inlet("B", 1, 5, "A", 0)), STORM)
                        .why())
                .isEqualTo("the water runs in a circle at A");
        assertThat(RationalFlows.of(List.of(inlet("A", 1, 5, "A", 0)), STORM).why())
                .isEqualTo("the water runs in a circle at A");
        assertThat(RationalFlows.of(
                                List.of(
                                        inlet("above", 1, 5, "A", 0),
                                        inlet("A", 1, 5, "B", 0),
                                        inlet("B", 1, 5, "A", 0)),
                                STORM)
                        .why())
                .isEqualTo("the water runs in a circle at A");
        assertThat(RationalFlows.of(List.of(outfall(), outfall()), STORM).why()).isEqualTo("the place OF stands twice");
        assertThat(RationalFlows.of(List.of(inlet("A", 1, 5, "B", 0)), STORM).why())
                .isEqualTo("A passes its water on to B, which is not there");
    }

    @Test
    void aVeryLongDrainIsNoMatter() {
        List<Catchment> chain = new ArrayList<>(List.of(outfall()));
        IntStream.range(0, 20_000).forEach(i -> chain.add(inlet("I-" + i, 1, 5, i == 0 ? "OF" : "I-" + (i - 1), 0)));

        assertThat(cubicFeet(flows(STORM, chain.toArray(Catchment[]::new)), "OF"))
                .isCloseTo(20_000 / 43_200.0 * 0.9 * 7.14, within(1e-6));
    }

    private static Map<String, Answer<GatheredFlow>> flows(DesignStorm storm, Catchment... places) {
        return RationalFlows.of(List.of(places), storm).value().orElseThrow();
    }

    private static Catchment inlet(String id, double squareFeet, double overland, String downstream, double travel) {
        return new Catchment(
                id,
                Optional.of(runoff(0.9, squareFeet(squareFeet))),
                minutes(overland),
                Optional.of(downstream),
                minutes(travel));
    }

    private static Catchment outfall() {
        return new Catchment("OF", Optional.empty(), minutes(0), Optional.empty(), minutes(0));
    }

    private static Answer<GatheredFlow> at(Map<String, Answer<GatheredFlow>> flows, String id) {
        return Optional.ofNullable(flows.get(id)).orElseThrow();
    }

    private static double cubicFeet(Map<String, Answer<GatheredFlow>> flows, String id) {
        return at(flows, id).value().orElseThrow().flow().in(Unit.CUBIC_FOOT_PER_SECOND);
    }
}
