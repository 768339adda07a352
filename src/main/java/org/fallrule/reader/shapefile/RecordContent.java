package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The content of one record.
 *
 * @param bytes exactly its bytes, little-endian
 * @param feature the feature that the record holds
 */
record RecordContent(ByteBuffer bytes, Place feature) {

    int length() {
        return bytes.limit();
    }

    int intAt(int offset) {
        return bytes.getInt(offset);
    }

    double doubleAt(int offset) {
        return bytes.getDouble(offset);
    }

    /**
     * A count that stands at an offset.
     *
     * @throws UnusableInput when it is negative
     */
    int countAt(int offset, String ofWhat) {
        int count = intAt(offset);
        if (count < 0) {
            throw unusable("claims " + count + " " + ofWhat + "; wanted none or more; export the layer again");
        }
        return count;
    }

    /**
     * Checks, before anything is set aside for it, that the content holds what it claims to.
     *
     * @param wanted bytes that the claim needs
     * @param claim what it claims, such as {@code 3 points}
     */
    void requireLength(long wanted, String claim) {
        if (wanted > length()) {
            throw unusable("claims " + claim + ", which take " + wanted + " bytes, but its content has " + length()
                    + "; copy or export the file again");
        }
    }

    UnusableInput unusable(String says) {
        return new UnusableInput(feature, says);
    }
}
