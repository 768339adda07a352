package org.fallrule.intake;

import java.util.Optional;

/** Whoever can be asked. */
@FunctionalInterface
public interface Asker {

    /** Nobody can be asked. */
    Asker NOBODY = question -> Optional.empty();

    /** The answer, as {@link Question#read} gives it; nothing leaves the question open. */
    Optional<String> ask(Question question);
}
