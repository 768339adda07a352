package org.fallrule.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something that the files do not tell.
 *
 * @param key what it is about, such as {@code units.elevation}; no two questions have the same
 * @param says the question
 * @param choices answers to choose from; none where the answer is free
 * @param reading makes an answer of what was typed; nothing when that cannot be one
 */
public record Question(String key, String says, List<String> choices, Function<String, Optional<String>> reading) {

    public Question {
        choices = List.copyOf(choices);
    }

    /** A question with one of several answers. */
    static Question choice(String key, String says, List<String> choices) {
        return new Question(
                key,
                says,
                choices,
                typed -> choices.stream()
                        .filter(choice -> choice.equalsIgnoreCase(typed.strip()))
                        .findFirst());
    }

    /** The answer that was typed: the number of a choice, or the answer itself. */
    public Optional<String> read(String typed) {
        String text = typed.strip();
        if (text.matches("[1-9]\\d{0,2}") && Integer.parseInt(text) <= choices.size()) {
            return Optional.of(choices.get(Integer.parseInt(text) - 1));
        }
        return reading.apply(text);
    }
}
