package org.fallrule.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The member names met so far in each object that is still open. Sets are used again, as a layer has many small objects. */
final class NamesSeen {
    static final int MAX_NAMES = 10_000;

    /** Clearing a set takes as long as it once was large. */
    private static final int REUSED_UP_TO = 100;

    private final List<Set<String>> open = new ArrayList<>();
    private int depth = -1;

    void objectStarts() {
        depth++;
        if (depth == open.size()) {
            open.add(new HashSet<>());
        } else if (open.get(depth).size() > REUSED_UP_TO) {
            open.set(depth, new HashSet<>());
        } else {
            open.get(depth).clear();
        }
    }

    void objectEnds() {
        depth--;
    }

    /** False when the innermost open object has had this name before. */
    boolean add(String name) {
        return open.get(depth).add(name);
    }

    boolean tooMany() {
        return open.get(depth).size() > MAX_NAMES;
    }
}
