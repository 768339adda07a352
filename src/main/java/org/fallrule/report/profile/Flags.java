package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.report.map.TextWidth;

/**
 * What is written at structures, as flags on poles above the drawing. All flags fly to the right; a flag that would lie across
 * the pole of a later one goes higher, so that no pole crosses a flag.
 */
final class Flags {
    static final double FONT = 11.5;
    static final double LINE = 13;
    private static final double GAP = 7;

    /**
     * A flag in its place.
     *
     * @param stand what it belongs to
     * @param x its pole, in pixels
     * @param bottom its lower edge above the drawing, in pixels
     */
    record Flag(Stand stand, double x, double bottom) {
        double height() {
            return LINE * (1 + stand.lines().size());
        }

        double top() {
            return bottom + height();
        }
    }

    private final List<Flag> all = new ArrayList<>();

    Flags(List<Stand> stands, java.util.function.DoubleUnaryOperator px) {
        for (int i = stands.size() - 1; i >= 0; i--) {
            Stand stand = stands.get(i);
            Flag low = new Flag(stand, px.applyAsDouble(stand.station()), GAP);
            double bottom = all.stream()
                    .filter(later -> later.x() < low.x() + width(stand) + GAP)
                    .mapToDouble(later -> later.top() + GAP)
                    .max()
                    .orElse(GAP);
            all.add(new Flag(stand, low.x(), bottom));
        }
    }

    /** The width of a place's flag in pixels. */
    static double width(Stand stand) {
        double name = 1.08 * TextWidth.of(stand.name(), FONT);
        double lines = stand.lines().stream()
                .mapToDouble(each -> TextWidth.of(each, FONT))
                .max()
                .orElse(0);
        return 4 + Math.max(name, lines);
    }

    List<Flag> all() {
        return all;
    }

    double height() {
        return all.stream().mapToDouble(Flag::top).max().orElse(0) + 4;
    }
}
