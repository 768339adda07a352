package org.fallrule.reader;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;

/** Problems that come again from feature to feature and are told of the first alone. */
final class ToldOnce {
    private final List<Fault> problems;
    private final Set<String> told = new HashSet<>();

    ToldOnce(List<Fault> problems) {
        this.problems = problems;
    }

    /** @param key what it is about; of two problems with the same key the first is told */
    void tell(String key, Place place, String says) {
        if (told.add(key)) {
            problems.add(new Fault(place, says));
        }
    }
}
