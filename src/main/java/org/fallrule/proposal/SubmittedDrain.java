package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;

/** The drain that a plan was submitted with, as one to be graded and sized. */
final class SubmittedDrain {
    private final PipeNetwork network;
    private final List<Drain.Node> places = new ArrayList<>();
    private final Map<Integer, Integer> placeOf = new HashMap<>();

    private SubmittedDrain(PipeNetwork network) {
        this.network = network;
    }

    /** Nothing where the plan leads some of its water nowhere, or not all of it to one outfall. */
    static Optional<Drain> of(Site site, PipeNetwork network) {
        List<Junction> outfalls =
                network.junctions().stream().filter(Junction::isOutfall).toList();
        boolean isOneTree = outfalls.size() == 1
                && network.runs().stream().allMatch(run -> network.isTaken(run) && leadsOut(network, run));
        return isOneTree && site.features(Role.INLET).stream().allMatch(inlet -> isLed(network, inlet))
                ? new SubmittedDrain(network).drain(outfalls.get(0))
                : Optional.empty();
    }

    private static boolean leadsOut(PipeNetwork network, PipeRun run) {
        return network.outfallOf(run).isPresent();
    }

    private static boolean isLed(PipeNetwork network, Feature inlet) {
        return network.junctionOf(inlet).flatMap(network::leaving).isPresent();
    }

    /** The first inlet and the outfall come first, as in a drain that is found. */
    private Optional<Drain> drain(Junction outfall) {
        Optional<Junction> head = network.junctions().stream()
                .filter(junction -> junction.structure(Role.INLET).isPresent())
                .findFirst();
        head.ifPresent(this::place);
        place(outfall);
        network.runs().forEach(run -> {
            place(run.up());
            place(run.down());
        });
        return head.map(any -> new Drain(
                places,
                network.runs().stream()
                        .map(run -> new Drain.Reach(place(run.up()), place(run.down()), axis(run)))
                        .toList()));
    }

    private int place(Junction junction) {
        return placeOf.computeIfAbsent(junction.number(), any -> {
            places.add(new Drain.Node(junction.place(), junction.structure(Role.INLET)));
            return places.size() - 1;
        });
    }

    /** From the one place to the other; a pipe's end may be drawn a little beside them. */
    private List<Coordinate> axis(PipeRun run) {
        List<Coordinate> axis = new ArrayList<>(List.of(run.axis().getCoordinates()));
        axis.set(0, run.up().place());
        axis.set(axis.size() - 1, run.down().place());
        return axis;
    }
}
