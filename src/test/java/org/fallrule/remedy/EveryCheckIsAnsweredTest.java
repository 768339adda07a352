package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fallrule.rulebook.Checks;
import org.junit.jupiter.api.Test;

/** For the findings of every check a change is tried, or what is to be done instead is told. */
class EveryCheckIsAnsweredTest {
    private static final Set<String> TRIED =
            LeastChange.KINDS.stream().flatMap(kind -> kind.checks().stream()).collect(Collectors.toSet());

    @Test
    void aCheckHasKindsOfChangesOrWordsOfItsOwn() {
        Set<String> answered = new TreeSet<>(TRIED);
        answered.addAll(NoRemedy.NOT_TRIED.keySet());

        assertThat(answered)
                .as(
                        "a new check: name it in the checks() of the remedies that may pass it, or say in NoRemedy what is to be"
                                + " done instead")
                .isEqualTo(new TreeSet<>(Checks.all().names()));
    }

    @Test
    void noCheckHasBoth() {
        Set<String> both = new HashSet<>(TRIED);
        both.retainAll(NoRemedy.NOT_TRIED.keySet());

        assertThat(both).isEmpty();
    }
}
