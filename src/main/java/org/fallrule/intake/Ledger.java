package org.fallrule.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts questions, and keeps what was told and what stays open. */
final class Ledger {
    private final Asker asker;
    private final List<String> told = new ArrayList<>();
    private final List<Open> open = new ArrayList<>();
    private int asked;
    private int answered;

    Ledger(Asker asker) {
        this.asker = asker;
    }

    /**
     * A question that stays open and belongs to no line of a layer.
     *
     * @param question the question
     * @param offered lines of site.yaml that may answer it, offered as comments
     */
    record Open(String question, List<String> offered) {}

    Optional<String> ask(Question question) {
        asked++;
        Optional<String> answer = asker.ask(question);
        answered += answer.isPresent() ? 1 : 0;
        return answer;
    }

    void tell(String says) {
        told.add(says);
    }

    void tellOnce(String says) {
        if (!told.contains(says)) {
            told.add(says);
        }
    }

    void leaveOpen(String question, List<String> offered) {
        open.add(new Open(question, offered));
    }

    List<String> told() {
        return List.copyOf(told);
    }

    List<Open> open() {
        return List.copyOf(open);
    }

    int asked() {
        return asked;
    }

    int answered() {
        return answered;
    }
}
