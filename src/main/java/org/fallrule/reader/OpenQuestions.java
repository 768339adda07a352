package org.fallrule.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;

/**
 * What site.yaml or a profile of layers asks and nobody has answered: lines that carry {@value #MARK}. A mark behind a key is answered by the value
 * that is put there; a mark on a line of its own stands until the line is taken away.
 */
public final class OpenQuestions {
    /** What a question in such a file begins with. */
    public static final String MARK = "# ask:";

    private static final Pattern ASKED = Pattern.compile("^(|.*\\s)" + MARK + "(.*)$");
    private static final Pattern UNSAID = Pattern.compile("^\\s*(?:([^\\s].*):)?\\s*$");

    private OpenQuestions() {}

    /** The open questions in a file's text, each with its line. */
    static List<Fault> in(String file, String shownAs) {
        List<Fault> open = new ArrayList<>();
        int line = 0;
        for (String text : file.lines().toList()) {
            line++;
            Matcher asked = ASKED.matcher(text);
            Matcher unsaid = UNSAID.matcher(asked.matches() ? asked.group(1) : "said");
            if (unsaid.matches()) {
                String key = Optional.ofNullable(unsaid.group(1)).orElse("");
                open.add(new Fault(
                        Place.of(shownAs).at(line, 0).field(key),
                        "is open: " + asked.group(2).strip()));
            }
        }
        return open;
    }
}
