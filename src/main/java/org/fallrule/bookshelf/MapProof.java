package org.fallrule.bookshelf;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.RuleLibrary;

/**
 * Whether the map of counties can be used.
 *
 * @param file the map as the user knows it
 * @param counties the counties on it
 * @param faults what is wrong with it
 */
public record MapProof(String file, List<String> counties, List<Fault> faults) {

    public MapProof {
        counties = List.copyOf(counties);
        faults = List.copyOf(faults);
    }

    /** Reads the map; empty when there is none. */
    public static Optional<MapProof> of(RuleLibrary library) {
        try {
            return CountyMap.of(library).map(map -> new MapProof(map.file(), map.counties(), List.of()));
        } catch (UnusableInput e) {
            return Optional.of(new MapProof(CountyMap.shown(library), List.of(), e.faults()));
        }
    }

    public boolean usable() {
        return faults.isEmpty();
    }
}
