package org.fallrule.network;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.measure.Elevation;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/**
 * The outgoing invert of an inlet.
 *
 * @param value the invert
 * @param from the pipe whose end it was taken from; empty where the plan gives the inlet's own
 */
public record InletInvert(Elevation value, Optional<Feature> from) {

    /** The inlet's own, else the lowest end of a pipe there; empty where the plan gives neither. */
    public static Optional<InletInvert> of(PipeNetwork network, Feature inlet) {
        return inlet.get(Attribute.INVERT)
                .map(own -> new InletInvert(own, Optional.empty()))
                .or(() -> network.junctionOf(inlet).flatMap(junction -> lowestEnd(network, junction)));
    }

    private static Optional<InletInvert> lowestEnd(PipeNetwork network, Junction junction) {
        return network.touching(junction).stream()
                .flatMap(run -> ends(run, junction))
                .min(Comparator.comparingDouble(end -> end.value().metres()));
    }

    private static Stream<InletInvert> ends(PipeRun run, Junction junction) {
        Stream<Elevation> up = run.up().number() == junction.number() ? run.invertUp().stream() : Stream.empty();
        Stream<Elevation> down = run.down().number() == junction.number() ? run.invertDown().stream() : Stream.empty();
        return Stream.concat(up, down).map(invert -> new InletInvert(invert, Optional.of(run.pipe())));
    }

    /** {@code its invert is taken from the end of pipe P-1}; nothing to say of the inlet's own. */
    public Optional<String> spoken() {
        return from.map(pipe -> "its invert is taken from the end of " + pipe.spoken());
    }
}
