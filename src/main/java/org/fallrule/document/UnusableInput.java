package org.fallrule.document;

import java.util.List;
import java.util.stream.Collectors;

/** The input cannot be used at all. Carries every fault found, so that the user can mend them in one go. */
public final class UnusableInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    public UnusableInput(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining(System.lineSeparator())));
        this.faults = List.copyOf(faults);
    }

    public UnusableInput(Place where, String says) {
        this(List.of(new Fault(where, says)));
    }

    public List<Fault> faults() {
        return faults;
    }
}
