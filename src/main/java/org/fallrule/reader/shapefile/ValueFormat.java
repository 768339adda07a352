package org.fallrule.reader.shapefile;

import java.nio.charset.Charset;
import java.util.Optional;
import java.util.function.Consumer;

/** How the bytes of one column are a value. */
interface ValueFormat {

    /**
     * The value; empty when the column is blank, or, with a complaint, when its bytes are no such value.
     *
     * @param raw the bytes of the column in one row
     * @param complain takes a sentence for each thing wrong with them
     */
    Optional<Object> read(byte[] raw, Consumer<String> complain);

    /** The format of a column; empty when its type is none that is read. */
    static Optional<ValueFormat> of(DbfField field, Charset charset) {
        return Optional.ofNullable(
                switch (field.type()) {
                    case 'C' -> new TextFormat(charset);
                    case 'N' -> field.decimals() == 0 ? new WholeNumberFormat() : new NumberFormat();
                    case 'F' -> new NumberFormat();
                    case 'L' -> new LogicalFormat();
                    case 'D' -> new DateFormat();
                    default -> null;
                });
    }
}
