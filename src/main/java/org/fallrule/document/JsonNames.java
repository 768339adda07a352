package org.fallrule.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What stands before the value of a member: a comma, a line end, its name, a colon. It is made once for each name and depth. */
final class JsonNames {
    private final boolean isIndented;
    private final List<Map<String, byte[]>> byDepth = new ArrayList<>();

    JsonNames(boolean isIndented) {
        this.isIndented = isIndented;
    }

    /** The bytes of it. The first member of an object stands without the first of them, the comma. */
    byte[] before(String name, int depth) {
        while (byDepth.size() <= depth) {
            byDepth.add(new HashMap<>());
        }
        Map<String, byte[]> made = byDepth.get(depth);
        byte[] before = made.get(name);
        if (before == null) {
            before = before(name, isIndented, depth);
            made.put(name, before);
        }
        return before;
    }

    private static byte[] before(String name, boolean isIndented, int depth) {
        JsonBytes bytes = new JsonBytes(2 * name.length() + 16);
        bytes.sign(',');
        if (isIndented) {
            bytes.lineEnd(depth);
        }
        bytes.quoted(name);
        bytes.ascii(isIndented ? " : " : ":");
        return bytes.toArray();
    }
}
