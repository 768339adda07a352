package org.fallrule.intake;

/**
 * A line of site.yaml.
 *
 * @param key its key
 * @param value what it says; blank where nothing is known
 * @param remark why, or what it asks; blank where the line speaks for itself
 * @param sureness how sure it is
 */
public record Statement(String key, String value, String remark, Sureness sureness) {

    static Statement certain(String key, String value) {
        return new Statement(key, value, "", Sureness.CERTAIN);
    }

    static Statement likely(String key, String value, String remark) {
        return new Statement(key, value, remark, Sureness.LIKELY);
    }

    static Statement open(String key, String question) {
        return new Statement(key, "", question, Sureness.ASKS);
    }

    /** A key that is left empty on purpose. */
    static Statement none(String key, String remark) {
        return new Statement(key, "", remark, Sureness.CERTAIN);
    }

    boolean isOpen() {
        return sureness == Sureness.ASKS;
    }
}
