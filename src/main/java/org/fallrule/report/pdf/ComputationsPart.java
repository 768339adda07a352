package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.report.Computation;

/** The computations step by step, so that whoever answers for the plan can do them again. */
final class ComputationsPart {
    private final Galley galley;
    private final List<Computation> computations;

    ComputationsPart(Galley galley, List<Computation> computations) {
        this.galley = galley;
        this.computations = computations;
    }

    void write() throws IOException {
        if (computations.isEmpty()) {
            return;
        }
        galley.heading(2, "Computations", 120);
        for (Computation computation : computations) {
            galley.heading(3, computation.title(), 60);
            List<List<String>> rows =
                    computation.steps().stream().map(ComputationsPart::row).toList();
            new DataTable(galley, List.of("step", "formula", "with", "gives", "source"), rows).draw();
        }
    }

    private static List<String> row(Computation.Step step) {
        String inputs = step.inputs().stream()
                .map(input -> input.name() + " = " + input.value())
                .collect(Collectors.joining(", "));
        return List.of(step.name(), step.formula(), inputs, step.result(), step.source());
    }
}
