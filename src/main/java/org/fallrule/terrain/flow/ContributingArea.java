package org.fallrule.terrain.flow;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.measure.Area;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;

/**
 * The area whose water comes to a place on the ground.
 *
 * @param place the place, such as an inlet
 * @param area the plan area that drains there and to no other of the places first. Shared water counts by share (Tarboton
 *     1997), so two places side by side on a slope may each have part of a cell. The grid's rim is not counted
 * @param isCut whether some of the area reaches the grid's rim, beyond which more may drain here
 * @param byLabel the area by what was said of each part of it
 * @param farthest the longest way that water comes here by
 */
public record ContributingArea(
        Coordinate place, Area area, boolean isCut, Map<String, Area> byLabel, FlowWay farthest) {
    public ContributingArea {
        byLabel = Map.copyOf(byLabel);
    }

    /**
     * The way of water over the ground, from node to node where the greater share goes.
     *
     * @param length in plan
     * @param fall from its first node to its last
     */
    public record FlowWay(Length length, Length fall) {}

    /**
     * The areas of several places, each of which takes in the water that comes to within a radius of it; so a place further
     * down gets only what the others leave. A hollow with a place in it drains there, and overflows nowhere.
     *
     * @param radius within which water is taken in; zero or little for the one cell that holds the place
     * @param label what to say of a place on the ground, such as what lies there; empty where its rain goes elsewhere
     * @return in the order of the places; nothing drains to one that lies on no ground
     */
    public static List<ContributingArea> of(
            FilledGround ground, List<Coordinate> places, Length radius, Function<Coordinate, Optional<String>> label) {
        return new AreaSum(ground, places, radius.metres(), label).areas();
    }

    /** The areas of several places, nothing being said of the ground. */
    public static List<ContributingArea> of(FilledGround ground, List<Coordinate> places, Length radius) {
        return of(ground, places, radius, any -> Optional.of(""));
    }

    /** The area of one place. */
    public static ContributingArea of(FilledGround ground, Coordinate place, Length radius) {
        return of(ground, List.of(place), radius).get(0);
    }
}
