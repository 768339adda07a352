package org.fallrule.report.data;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Function;
import org.fallrule.document.JsonWriter;

/** Members that tell of things which many objects of a report have in common. They are made once for each thing. */
final class SharedMembers<T> {
    private final Function<T, Map<String, Object>> members;
    private final Map<T, JsonWriter.Repeated> made;

    private SharedMembers(Map<T, JsonWriter.Repeated> made, Function<T, Map<String, Object>> members) {
        this.made = made;
        this.members = members;
    }

    /** Of things that are told apart by what they are. */
    static <T> SharedMembers<T> ofEqual(Function<T, Map<String, Object>> members) {
        return new SharedMembers<>(new HashMap<>(), members);
    }

    /** Of things that are the same object where they are the same, and cost much to hold against others. */
    static <T> SharedMembers<T> ofSame(Function<T, Map<String, Object>> members) {
        return new SharedMembers<>(new IdentityHashMap<>(), members);
    }

    JsonWriter.Repeated of(T thing) {
        JsonWriter.Repeated known = made.get(thing);
        if (known == null) {
            known = new JsonWriter.Repeated(members.apply(thing));
            made.put(thing, known);
        }
        return known;
    }
}
