package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import org.fallrule.reader.layer.Findings;

/**
 * The first 32 bytes of a {@code .dbf} (dBASE III table).
 *
 * @param rows number of rows, deleted ones included
 * @param headerLength bytes before the first row
 * @param rowLength bytes of one row, the deletion mark included
 * @param language the code page mark ("language driver"), 0 when there is none
 */
record DbfHeader(long rows, int headerLength, int rowLength, int language) {
    static final int LENGTH = 32;
    private static final int DBASE_III = 0x03;
    private static final int LEVEL_MASK = 0x07;
    private static final int LEVEL_7 = 0x04;
    private static final int END_OF_FILE_MARK = 1;

    /**
     * Reads the header.
     *
     * @throws org.fallrule.document.UnusableInput when it is too short, of dBASE level 7, or claims more rows than there are bytes for
     */
    static DbfHeader read(ByteBuffer bytes, ShownFile dbf, Findings findings) {
        if (bytes.limit() < LENGTH) {
            throw dbf.unusable("is " + bytes.limit()
                    + " bytes long; wanted a dBASE table, whose header takes 32 and more; export the layer again");
        }
        checkVersion(bytes.get(0) & 0xFF, dbf, findings);
        DbfHeader header = new DbfHeader(
                bytes.getInt(4) & 0xFFFFFFFFL,
                bytes.getShort(8) & 0xFFFF,
                bytes.getShort(10) & 0xFFFF,
                bytes.get(29) & 0xFF);
        header.requireRoom(bytes.limit(), dbf, findings);
        return header;
    }

    /** Offset of a row, counted from 0, in the file. */
    int rowStart(int row) {
        return headerLength + row * rowLength;
    }

    private static void checkVersion(int version, ShownFile dbf, Findings findings) {
        if ((version & LEVEL_MASK) == LEVEL_7) {
            throw dbf.unusable(
                    "is a table of dBASE level 7; wanted dBASE III; save it as dBASE III or export the layer again");
        }
        if (version != DBASE_III) {
            findings.note(
                    dbf.place(),
                    "is marked as version " + version + "; wanted 3, dBASE III; read as that; check its columns");
        }
    }

    private void requireRoom(int size, ShownFile dbf, Findings findings) {
        if (headerLength < LENGTH || headerLength > size || rowLength < 1) {
            throw dbf.unusable("gives " + headerLength + " bytes of header and " + rowLength
                    + " bytes for a row in a file of "
                    + size + " bytes; wanted a header of 33 or more that the file can hold and rows of 1 or more; "
                    + "export the layer again");
        }
        long spare = size - headerLength - rows * rowLength;
        if (spare < 0) {
            throw dbf.unusable("claims " + rows + " rows of " + rowLength + " bytes, but only " + (size - headerLength)
                    + " bytes stand behind its header; copy or export the file again");
        }
        if (spare > END_OF_FILE_MARK) {
            findings.note(
                    dbf.place(),
                    spare + " bytes stand behind its " + rows
                            + " rows; they were not read; check that no row is missing");
        }
    }
}
