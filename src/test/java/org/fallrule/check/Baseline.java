package org.fallrule.check;

import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.locality.Locality;
import org.fallrule.rulebook.RuleLibrary;

/** What the shipped books say of a place, for tests that ask what a reader of their reports will see. */
public final class Baseline {
    private Baseline() {}

    public static Locality locality() {
        return new RuleLibrary(Path.of("rules"), "rules")
                .load("larkmoor", Optional.empty())
                .locality();
    }
}
