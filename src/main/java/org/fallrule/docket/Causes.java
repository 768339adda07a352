package org.fallrule.docket;

import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;

/** Why a site could not be checked, for whoever gave it. */
public final class Causes {
    private Causes() {}

    /** The faults of its input; or that memory does not suffice; or that the program itself is at fault. */
    public static List<String> of(Throwable failure) {
        if (failure instanceof UnusableInput unusable) {
            return unusable.faults().stream().map(Fault::toString).toList();
        }
        if (failure instanceof OutOfMemoryError) {
            return List.of("there is not enough memory for it; give more with java -Xmx, or use fewer --jobs");
        }
        return List.of("this is a fault of the program, please report it: " + failure);
    }
}
