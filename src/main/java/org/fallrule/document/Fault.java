package org.fallrule.document;

/**
 * Something wrong with the input: where it stands, and a sentence that says what was found, what was wanted and what to do.
 *
 * @param where the place
 * @param says the sentence, without the place
 */
public record Fault(Place where, String says) {

    @Override
    public String toString() {
        return where + ": " + says;
    }
}
