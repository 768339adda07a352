package org.fallrule.report.data;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Function;
import org.fallrule.document.JsonWriter;

/** Members that tell of things which many objects of a report have in common. They are made once for each thing. */
final class SharedMembers<T> {
    private final Function<T, Map<String, Object>> members;
    private final IdentityHashMap<T, JsonWriter.Repeated> made = new IdentityHashMap<>();

    SharedMembers(Function<T, Map<String, Object>> members) {
        this.members = members;
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
