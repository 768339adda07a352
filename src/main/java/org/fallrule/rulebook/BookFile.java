package org.fallrule.rulebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.locality.Locality;

/**
 * One rule book as its file has it, before it is laid over another.
 *
 * @param layer which layer it is
 * @param file its path as the user knows it
 * @param title its title
 * @param sha256 the digest of its bytes, for the report
 * @param buildsOn the path of the book under it, where it stands
 * @param inForce when it is in force
 * @param locality what it says of its place
 * @param asBuilt how far it lets the work as built lie from its design
 * @param place what it says of its place and of the work as built, as written
 * @param checklist its checklist, as written
 * @param rules its rules by id, in the order written
 * @param rulePlaces where each rule's id stands
 */
record BookFile(
        Layer layer,
        String file,
        String title,
        String sha256,
        Optional<Node.Scalar> buildsOn,
        InForce inForce,
        Locality locality,
        AsBuiltTolerances asBuilt,
        Node.Mapping place,
        Optional<Node.Mapping> checklist,
        Map<String, Node.Mapping> rules,
        Map<String, Place> rulePlaces) {

    BookFile {
        rules = Collections.unmodifiableMap(new LinkedHashMap<>(rules));
        rulePlaces = Map.copyOf(rulePlaces);
    }

    /** The layers, from the lowest. */
    enum Layer {
        BASELINE,
        COUNTY,
        HOUSE;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
