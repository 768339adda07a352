package org.fallrule.measure;

/** Text that is not a quantity of the wanted kind. The message says what was found and what was wanted. */
public final class UnreadableQuantity extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String says;

    private UnreadableQuantity(String says) {
        super(says);
        this.says = says;
    }

    /** What was found and what was wanted. */
    public String says() {
        return says;
    }

    static UnreadableQuantity notANumber(String text, Dimension wanted) {
        return new UnreadableQuantity(
                "\"" + text + "\" is not a number; give " + article(wanted) + " such as " + wanted.example());
    }

    static UnreadableQuantity unitMissing(String text, Dimension wanted) {
        return new UnreadableQuantity("\"" + text + "\" has no unit; give " + article(wanted) + " with "
                + Unit.symbolsOf(wanted) + ", such as " + wanted.example());
    }

    static UnreadableQuantity unitUnknown(String text, String unit, Dimension wanted) {
        if (wanted == Dimension.LENGTH && (text.indexOf('\'') > 0 || text.indexOf('"') > 0)) {
            return new UnreadableQuantity("\"" + text + "\" is not read as feet and inches; give one number with its"
                    + " unit: 5 ft 6 in is 5.5 ft or 66 in");
        }
        return new UnreadableQuantity("\"" + text + "\": \"" + unit.strip() + "\" is not a unit of " + wanted.word()
                + (wanted == Dimension.RATIO ? "; give a number alone" : "; use " + Unit.symbolsOf(wanted)));
    }

    static UnreadableQuantity tooLong(String start, Dimension wanted) {
        return new UnreadableQuantity(
                "\"" + start + "\"… is too long for " + article(wanted) + "; give one such as " + wanted.example());
    }

    static UnreadableQuantity tooGreat(String text, Dimension wanted) {
        return new UnreadableQuantity("\"" + text + "\" is too great for " + article(wanted)
                + " on a lot; give one such as " + wanted.example());
    }

    static UnreadableQuantity steepRatio(String text) {
        return new UnreadableQuantity(
                "\"" + text + "\" falls more than it runs; a ratio is fall to run, such as 1:48, and a"
                        + " steeper slope is written in percent");
    }

    private static String article(Dimension dimension) {
        String word = dimension.word();
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }
}
