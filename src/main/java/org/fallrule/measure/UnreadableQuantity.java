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
                "\"" + text + "\" is not a number; give " + article(wanted) + " such as " + example(wanted));
    }

    static UnreadableQuantity unitMissing(String text, Dimension wanted) {
        return new UnreadableQuantity("\"" + text + "\" has no unit; give " + article(wanted) + " with "
                + Unit.symbolsOf(wanted) + ", such as " + example(wanted));
    }

    static UnreadableQuantity unitUnknown(String text, String unit, Dimension wanted) {
        return new UnreadableQuantity("\"" + text + "\": \"" + unit.strip() + "\" is not a unit of " + wanted.word()
                + "; use " + Unit.symbolsOf(wanted));
    }

    static UnreadableQuantity tooLong(String start, Dimension wanted) {
        return new UnreadableQuantity(
                "\"" + start + "\"… is too long for " + article(wanted) + "; give one such as " + example(wanted));
    }

    static UnreadableQuantity tooGreat(String text, Dimension wanted) {
        return new UnreadableQuantity("\"" + text + "\" is too great for " + article(wanted)
                + " on a lot; give one such as " + example(wanted));
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

    private static String example(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "18 in";
            case ELEVATION -> "612.40 ft";
            case SLOPE -> "1/8 in/ft or 1 %";
            case AREA -> "1200 sq ft";
            case ANGLE -> "45 deg";
        };
    }
}
