package org.fallrule.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.intake.Asker;
import org.fallrule.intake.Question;
import org.fallrule.report.text.Wrapped;

/** Asks line by line and reads what is typed. An empty line, or the end of what is typed, leaves a question open. */
final class TypedAnswers implements Asker {
    private static final int WIDTH = 78;
    private static final String INTRODUCTION =
            "No file tells the following. Type the number or the word of a choice, or"
                    + " what is asked for; press Enter alone to leave a question open.";

    private final BufferedReader typed;
    private final PrintWriter screen;
    private boolean ended;
    private int count;

    TypedAnswers(BufferedReader typed, PrintWriter screen) {
        this.typed = typed;
        this.screen = screen;
    }

    @Override
    public Optional<String> ask(Question question) {
        if (ended) {
            return Optional.empty();
        }
        put(question);
        while (true) {
            screen.print("> ");
            screen.flush();
            Optional<String> line = line();
            if (line.isEmpty() || line.get().isBlank()) {
                return Optional.empty();
            }
            Optional<String> answer = question.read(line.get());
            if (answer.isPresent()) {
                return answer;
            }
            screen.println(
                    question.choices().isEmpty()
                            ? "That cannot be read; write it like the example, or press Enter alone."
                            : "Give the number of a choice or its word, or press Enter alone.");
        }
    }

    private void put(Question question) {
        if (count == 0) {
            Wrapped.lines(INTRODUCTION, WIDTH).forEach(screen::println);
        }
        count++;
        screen.println();
        String says = question.says();
        String sentence = says.substring(0, 1).toUpperCase(Locale.ROOT) + says.substring(1);
        Wrapped.lines(count + ". " + sentence, WIDTH).forEach(screen::println);
        int number = 0;
        for (String choice : question.choices()) {
            number++;
            Wrapped.lines(number + ") " + choice, WIDTH - 3).forEach(part -> screen.println("   " + part));
        }
    }

    private Optional<String> line() {
        try {
            Optional<String> line = Optional.ofNullable(typed.readLine());
            ended = line.isEmpty();
            return line;
        } catch (IOException e) {
            ended = true;
            return Optional.empty();
        }
    }
}
