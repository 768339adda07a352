package org.fallrule.intake;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;

/**
 * A code with a size, as crews write it: {@code TREE 24"}, {@code TREE24}, {@code CB 12X12}, {@code MH-48}, {@code 24" OAK}. What
 * follows a size that stands behind its code, such as a species, is passed over. The forms are common practice without a source.
 *
 * @param code the code without the size
 * @param numbers the size, or both of one that is written across another
 * @param unit the unit that is written with it; a number without one may as well tell points apart
 */
record SizedCode(String code, List<String> numbers, Optional<Unit> unit) {
    private static final int LONGEST = 40;
    private static final String WORDS = "(?<code>\\p{L}[\\p{L}/ _-]*)";
    private static final String NUMBER = "(?:\\d{1,2}[ -])?\\d{1,2}/\\d{1,2}|\\d{1,4}(?:\\.\\d{1,3})?";
    private static final String UNIT =
            "\"|''|[\u201c\u201d\u2033]|['\u2018\u2019\u2032]" + "|(?:inches|inch|in|feet|foot|ft|mm|cm|m)\\b\\.?";
    private static final String SIZE = "(?<one>" + NUMBER + ")\\s*(?<unit>" + UNIT + ")?"
            + "(?:\\s*[xX\u00d7]\\s*(?<other>" + NUMBER + ")\\s*(?<otherunit>" + UNIT + ")?)?";
    private static final Pattern BEHIND =
            Pattern.compile(WORDS + "[\\s_-]*" + SIZE + "(?:\\s+\\p{L}[\\p{L} ]*)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern BEFORE = Pattern.compile(SIZE + "[\\s_-]*" + WORDS, Pattern.CASE_INSENSITIVE);

    SizedCode {
        numbers = List.copyOf(numbers);
    }

    /** The code and size in a text; nothing where it holds no such. */
    static Optional<SizedCode> of(String text) {
        String tidy = text.strip();
        if (tidy.length() > LONGEST) {
            return Optional.empty();
        }
        return Stream.of(BEHIND, BEFORE)
                .map(form -> form.matcher(tidy))
                .filter(Matcher::matches)
                .findFirst()
                .map(SizedCode::read);
    }

    private static SizedCode read(Matcher found) {
        Stream<String> numbers = Stream.of("one", "other").map(found::group).filter(number -> number != null);
        Optional<Unit> unit = Stream.of("unit", "otherunit")
                .map(found::group)
                .filter(word -> word != null)
                .findFirst()
                .flatMap(SizedCode::unit);
        return new SizedCode(
                found.group("code").replaceFirst("[ _-]+$", ""),
                numbers.map(number -> number.replace('-', ' ')).toList(),
                unit);
    }

    /** Two strokes mean inches and one means feet, straight or curled. */
    private static Optional<Unit> unit(String word) {
        String straight = word.replaceAll("[\u201c\u201d\u2033]|''", "\"").replaceAll("[\u2018\u2019\u2032]", "'");
        return Unit.named(straight.replace(".", ""), Dimension.LENGTH);
    }

    /** The code's first word, where it has several: {@code TREE OAK 24}. */
    String firstWord() {
        return code.split("[ _-]+", -1)[0];
    }

    /** Whether the number is no more than that, so that it may be the point's own. */
    boolean isBare() {
        return unit.isEmpty();
    }

    /** One of its numbers with the unit, as site.yaml wants it; the only one where there is one. */
    String written(int number) {
        String one = numbers.get(Math.min(number, numbers.size() - 1));
        return unit.map(known -> one + " " + known.symbol()).orElse(one);
    }
}
