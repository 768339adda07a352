package org.fallrule.reader.shapefile;

import java.util.Optional;
import java.util.function.Consumer;

/** Type L: T, t, Y or y for true, F, f, N or n for false, a question mark or blank for no value. */
final class LogicalFormat implements ValueFormat {

    @Override
    public Optional<Object> read(byte[] raw, Consumer<String> complain) {
        String text = AsciiText.of(raw);
        return switch (text) {
            case "T", "t", "Y", "y" -> Optional.of(true);
            case "F", "f", "N", "n" -> Optional.of(false);
            case "", "?" -> Optional.empty();
            default -> {
                complain.accept(
                        "found " + AsciiText.quoted(text) + "; wanted T or F; it was left out; choose one of them");
                yield Optional.empty();
            }
        };
    }
}
