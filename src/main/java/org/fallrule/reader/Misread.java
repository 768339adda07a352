package org.fallrule.reader;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Why a layer lies where it does not belong: read otherwise, its numbers lie at the plan. */
final class Misread {
    /** In metres. */
    private static final double NEAR = 1000;

    private Misread() {}

    /** A sentence that begins with a blank; nothing where no other reading leads there. */
    static Optional<String> cause(CoordinateSystem system, LocalFrame frame, List<Feature> features, Envelope there) {
        Coordinate at = features.get(0).geometry().getCoordinate();
        Optional<Coordinate> numbers = system.fromLonLat(frame.toLonLat(at));
        if (numbers.isEmpty()) {
            return Optional.empty();
        }
        double x = numbers.get().x;
        double y = numbers.get().y;
        double foot = Unit.FOOT.toSi();
        if (leads(new Coordinate(y, x), system, frame, there)) {
            return Optional.of(". Swapped, its two coordinates lie at the plan: are they the wrong way round?");
        }
        if (leads(new Coordinate(x * foot, y * foot), system, frame, there)) {
            return Optional.of(". Taken as feet, its numbers lie at the plan: is its system the one in feet?");
        }
        if (leads(new Coordinate(x / foot, y / foot), system, frame, there)) {
            return Optional.of(". Taken as metres, its numbers lie at the plan: is its system the one in metres?");
        }
        return Optional.empty();
    }

    private static boolean leads(Coordinate numbers, CoordinateSystem system, LocalFrame frame, Envelope there) {
        try {
            Coordinate local = frame.toLocal(system.toLonLat(numbers, Place.of("plan")));
            return there.distance(new Envelope(local)) < NEAR;
        } catch (UnusableInput elsewhere) {
            return false;
        }
    }
}
