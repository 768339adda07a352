package org.fallrule.check.pipe;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.LongSection;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.Stretch;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;

/** The cut that a pipe is laid in: its bottom lies below the pipe by the bedding. */
final class Trench {
    private final PipeProfile profile;
    private final Length bedding;
    private final List<Stretch> pieces;

    /** @param bedding how far the trench is dug below the pipe; none when the rule gives none */
    Trench(SiteAnalysis analysis, PipeRun run, PipeProfile profile, Optional<Quantity> bedding) {
        this.profile = profile;
        this.bedding = new Length(bedding.map(Quantity::si).orElse(0.0));
        this.pieces = new LongSection(analysis, run, profile).pieces(this::bottomAt);
    }

    Elevation bottomAt(double station) {
        return profile.bottomAt(station).minus(bedding);
    }

    /** Where it is deepest, as far as the ground is known. */
    Optional<Stretch.Spot> deepest() {
        return pieces.stream()
                .flatMap(piece -> piece.greatest().stream())
                .max(Comparator.comparing(Stretch.Spot::height));
    }

    /** The reaches where it is at least so deep; a single place has no length. */
    List<Reach> atLeast(Length depth) {
        return Reach.joined(pieces.stream()
                .filter(piece ->
                        piece.greatest().filter(spot -> reaches(spot, depth)).isPresent())
                .map(piece -> part(
                        piece, piece.least().orElseThrow(), piece.greatest().orElseThrow(), depth))
                .toList());
    }

    /** The reaches over which the ground is not known. */
    List<Reach> unknown() {
        return Reach.joined(pieces.stream()
                .filter(piece -> !piece.isKnown())
                .map(piece -> new Reach(piece.from(), piece.to()))
                .toList());
    }

    private static boolean reaches(Stretch.Spot spot, Length depth) {
        return depth.minus(spot.height()).metres() <= Dimension.LENGTH.tolerance();
    }

    /** The part of a piece that is so deep; from its one end to the other the depth changes evenly. */
    private static Reach part(Stretch piece, Stretch.Spot least, Stretch.Spot greatest, Length depth) {
        if (reaches(least, depth)) {
            return new Reach(piece.from(), piece.to());
        }
        double rise = greatest.height().minus(least.height()).metres();
        double share = Math.min(1, depth.minus(least.height()).metres() / rise);
        double change = least.station() + share * (greatest.station() - least.station());
        return new Reach(Math.min(change, greatest.station()), Math.max(change, greatest.station()));
    }
}
