package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/** The keys that a rule book may hold, asked of its readers themselves. */
public final class BookKeys {
    private BookKeys() {}

    /** The keys at the top of a book that speak of its place, such as {@code climate}. */
    public static List<String> ofPlace() {
        Keys keys = new Keys(Node.Mapping.empty(Place.of("book")), new ArrayList<>());
        new LocalityReader(new ArrayList<>()).read(keys);
        return List.copyOf(keys.asked());
    }
}
