package org.fallrule.reader.trap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.fallrule.measure.Elevation;
import org.fallrule.site.HeightField;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** The heights of the ground around a place, from its raster, else from spots, contours and breaklines. */
final class HeightsAround {
    /** How far around a place heights tell of it, in metres: spots of a survey stand so close. */
    private static final double REACH = 12;

    private final STRtree index = new STRtree();

    private final Optional<HeightField> raster;

    private HeightsAround(Optional<HeightField> raster) {
        this.raster = raster;
    }

    static HeightsAround of(PlanAsRead plan) {
        HeightsAround around = new HeightsAround(plan.raster(Role.GROUND));
        Stream.of(Role.SPOT, Role.CONTOUR, Role.BREAKLINE)
                .flatMap(plan::features)
                .flatMap(feature -> Stream.of(feature.geometry().getCoordinates()))
                .filter(place -> Double.isFinite(place.getZ()))
                .forEach(place -> around.index.insert(new Envelope(place), place));
        return around;
    }

    /** The middle one of them, in metres; none where there is none. */
    OptionalDouble at(Coordinate place) {
        Optional<Elevation> cell = raster.flatMap(heights -> heights.heightAt(place));
        if (cell.isPresent()) {
            return OptionalDouble.of(cell.get().metres());
        }
        Envelope box = new Envelope(place);
        box.expandBy(REACH);
        List<Double> heights = new ArrayList<>();
        for (Object found : index.query(box)) {
            heights.add(((Coordinate) found).getZ());
        }
        return heights.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(middle(heights));
    }

    /** The median. */
    static double middle(List<Double> numbers) {
        return numbers.stream().sorted().toList().get(numbers.size() / 2);
    }
}
