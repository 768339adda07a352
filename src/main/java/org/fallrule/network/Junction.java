package org.fallrule.network;

import java.util.List;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where pipes end or meet.
 *
 * @param number its position in the network's list of junctions
 * @param place where it lies, in the local frame
 * @param structures the inlets, outfalls and cleanouts that stand on it
 */
public record Junction(int number, Coordinate place, List<Feature> structures) {

    public Junction {
        structures = List.copyOf(structures);
    }

    public Optional<Feature> structure(Role role) {
        return structures.stream().filter(feature -> feature.role() == role).findFirst();
    }

    public boolean isOutfall() {
        return structure(Role.OUTFALL).isPresent();
    }
}
