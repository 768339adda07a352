package org.fallrule.rulebook;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.TreeMap;
import org.fallrule.check.Check;

/** The checks that there are, by name. */
public final class Checks {
    private final Map<String, Check> byName = new TreeMap<>();

    private Checks() {
        for (Check check : ServiceLoader.load(Check.class)) {
            byName.put(check.name(), check);
        }
    }

    public static Checks all() {
        return new Checks();
    }

    public Optional<Check> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    public Collection<Check> checks() {
        return byName.values();
    }

    public Collection<String> names() {
        return byName.keySet();
    }
}
