package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Yaml;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Length;
import org.junit.jupiter.api.Test;

class LayingInBooksTest {
    private static Laying read(String text, List<Fault> faults) {
        Node.Mapping mapping = Yaml.parse(text, "book.yaml");
        return new LayingReader(faults)
                .read(
                        mapping.get("laying").map(Node.Mapping.class::cast),
                        mapping.get("cost").map(Node.Mapping.class::cast));
    }

    @Test
    void theShippedBooksLackNothing() {
        Laying laying = new RuleLibrary(Path.of("rules"), "rules")
                .load("larkmoor", Optional.empty(), LocalDate.of(2026, 6, 1))
                .locality()
                .laying();

        assertThat(laying.lacking()).isEmpty();
        assertThat(laying.sizes().get(0)).isEqualTo(Length.inches(4));
    }

    @Test
    void aLaterBookChangesSingleKeys() {
        List<Fault> faults = new ArrayList<>();
        Laying below = read("""
                laying: {sizes: [6 in, 4 in], bedding: 4 in, basis: {kind: practice}}
                cost: {each_fitting: 1, basis: {kind: practice}}
                """, faults);
        Laying over = read("laying: {bedding: 6 in, basis: {kind: practice}}\n", faults);

        Laying both = below.overlaid(over);

        assertThat(faults).isEmpty();
        assertThat(both.measures()).containsEntry(Laying.Measure.BEDDING, Length.inches(6));
        assertThat(both.sizes()).containsExactly(Length.inches(4), Length.inches(6));
        assertThat(both.weight(Laying.Weighed.EACH_FITTING)).isEqualTo(1);
        assertThat(both.lacking()).contains("laying.material", "cost.pipe_per_foot");
    }

    @Test
    void whatCannotBeUsedIsSaidWithItsLine() {
        List<Fault> faults = new ArrayList<>();

        read(
                "laying:\n  grid: 0 ft\n  bedding: 4 mugs\n  mound: 2 in\ncost:\n  each_fitting: 1\n  basis: {kind: practice}\n",
                faults);

        assertThat(faults)
                .extracting(Fault::toString)
                .anySatisfy(
                        says -> assertThat(says).contains("book.yaml:2:9: \"0 ft\" is too little; give 1 in or more"));
        assertThat(faults)
                .extracting(Fault::toString)
                .anySatisfy(says -> assertThat(says).contains("book.yaml:3"));
        assertThat(faults)
                .extracting(Fault::toString)
                .anySatisfy(says -> assertThat(says).contains("mound"));
        assertThat(faults)
                .extracting(Fault::toString)
                .anySatisfy(says -> assertThat(says).contains("has no basis"));
    }
}
