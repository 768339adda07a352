package org.fallrule.report.map;

import java.util.Optional;
import org.fallrule.finding.Outcome;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** One thing drawn on a map, in metres of the plan's local frame. */
public sealed interface Shape {

    /**
     * An area with its edge.
     *
     * @param look how it is drawn
     * @param outline a polygon or several
     * @param title what it is, for whoever points at it
     * @param feature the feature that it is part of, by {@link FeatureName}
     */
    record Area(Look look, Geometry outline, String title, Optional<String> feature) implements Shape {
        public Area(Look look, Geometry outline, String title) {
            this(look, outline, title, Optional.empty());
        }
    }

    /**
     * A line. A drain pipe runs in the direction of its flow.
     *
     * @param look how it is drawn
     * @param path a line or several
     * @param title what it is
     * @param feature the feature that it is part of, by {@link FeatureName}
     */
    record Line(Look look, Geometry path, String title, Optional<String> feature) implements Shape {
        public Line(Look look, Geometry path, String title) {
            this(look, path, title, Optional.empty());
        }
    }

    /**
     * A symbol that has the same size on every map.
     *
     * @param look how it is drawn
     * @param place where its middle stands
     * @param title what it is
     * @param feature the feature that it is part of, by {@link FeatureName}
     */
    record Sign(Look look, Coordinate place, String title, Optional<String> feature) implements Shape {
        public Sign(Look look, Coordinate place, String title) {
            this(look, place, title, Optional.empty());
        }
    }

    /**
     * Words near what they name. Where there is no room for all, those of the lowest rank go.
     *
     * @param rank how much it matters
     * @param text the words
     * @param of what they name, clipped to the view
     * @param kept whether it must stay, if need be at the end of a leader
     */
    record Label(Rank rank, String text, Geometry of, boolean kept) implements Shape {}

    /**
     * A measured distance with ticks and arrows at both ends.
     *
     * @param from one end
     * @param to the other end
     * @param text the value as the report prints it
     */
    record Dimension(Coordinate from, Coordinate to, String text) implements Shape {}

    /**
     * A finding's number.
     *
     * @param outcome how it stands
     * @param number its number in the list of findings, from 1
     * @param place what it points at
     * @param title the finding in words
     */
    record Badge(Outcome outcome, int number, Coordinate place, String title) implements Shape {}

    /** How much a label matters, the most first. */
    enum Rank {
        VALUE,
        OUTFALL,
        INLET,
        PIPE,
        /** The letters along utilities are set at this point. */
        CODE,
        UTILITY,
        BUILDING,
        LIMIT,
        SURFACE,
        LOT,
        CONTOUR
    }
}
