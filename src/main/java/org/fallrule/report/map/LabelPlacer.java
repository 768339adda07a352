package org.fallrule.report.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Finds room for labels, one after the other. A label never lies on another one, on a pipe or on a symbol, nor reaches over
 * the edge of the sheet; it may lie on other lines, where there is nothing better. All in pixels of the sheet.
 */
public final class LabelPlacer {
    /** What crossing one more line costs, counted in places further down the list of candidates. */
    private static final double CROSSING = 3;

    private final Envelope sheet;
    private final HPRtree closed = new HPRtree();
    private final HPRtree crossed = new HPRtree();
    private final List<Envelope> taken = new ArrayList<>();

    /**
     * @param sheet where labels may lie
     * @param closed what they must not lie on
     * @param crossed what they had better not lie on
     */
    public LabelPlacer(Envelope sheet, List<Envelope> closed, List<Envelope> crossed) {
        this.sheet = sheet;
        closed.forEach(box -> this.closed.insert(box, box));
        crossed.forEach(box -> this.crossed.insert(box, box));
        this.closed.build();
        this.crossed.build();
    }

    /** Takes the best of the free candidates, which come the most wanted first; nothing when none is free. */
    public Optional<Envelope> place(Stream<Envelope> candidates) {
        Optional<Envelope> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        Iterator<Envelope> rest = candidates.iterator();
        for (int i = 0; i < least && rest.hasNext(); i++) {
            Envelope box = rest.next();
            double cost = i + CROSSING * crossed.query(box).size();
            if (cost < least && isFree(box)) {
                best = Optional.of(box);
                least = cost;
            }
        }
        best.ifPresent(taken::add);
        return best;
    }

    /** As {@link #place}, and when none is free the one on the sheet that lies on the fewest other things. */
    public Optional<Envelope> placeAnyway(List<Envelope> candidates) {
        Optional<Envelope> placed = place(candidates.stream());
        if (placed.isPresent()) {
            return placed;
        }
        Optional<Envelope> least = candidates.stream()
                .filter(sheet::contains)
                .min(Comparator.comparingInt(
                        box -> 100 * overlapped(box) + closed.query(box).size()));
        least.ifPresent(taken::add);
        return least;
    }

    private boolean isFree(Envelope box) {
        return sheet.contains(box) && overlapped(box) == 0 && closed.query(box).isEmpty();
    }

    private int overlapped(Envelope box) {
        return (int) taken.stream().filter(box::intersects).count();
    }
}
