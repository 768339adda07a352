package org.fallrule.reader.shapefile;

import java.util.ArrayList;
import java.util.List;

/** A dBASE III table built byte by byte. */
final class Table {
    private final Bytes fields = new Bytes();
    private final List<byte[]> rows = new ArrayList<>();
    private int rowLength = 1;
    private int language = 3;
    private int claimedRows = -1;
    private int claimedRowLength = -1;
    private int version = 3;

    /** A table with one column of that type and length. */
    static Table of(String name, char type, int length, int decimals) {
        return new Table().field(name, type, length, decimals);
    }

    Table field(String name, char type, int length, int decimals) {
        fields.text(name, 11, 0).bytes(type, 0, 0, 0, 0, length, decimals).raw(new byte[14]);
        rowLength += length;
        return this;
    }

    /** A row as the text after the deletion mark, filled up with blanks. */
    Table row(String values) {
        return markedRow(" " + values);
    }

    Table markedRow(String markAndValues) {
        rows.add(new Bytes().text(markAndValues, rowLength, ' ').toArray());
        return this;
    }

    int rows() {
        return rows.size();
    }

    Table language(int driver) {
        language = driver;
        return this;
    }

    Table version(int number) {
        version = number;
        return this;
    }

    Table claimingRows(int count) {
        claimedRows = count;
        return this;
    }

    Table claimingRowLength(int length) {
        claimedRowLength = length;
        return this;
    }

    byte[] toArray() {
        Bytes bytes = new Bytes()
                .bytes(version, 126, 1, 1)
                .little(claimedRows < 0 ? rows.size() : claimedRows)
                .shorts(32 + fields.size() + 1, claimedRowLength < 0 ? rowLength : claimedRowLength)
                .raw(new byte[17])
                .bytes(language, 0, 0)
                .raw(fields.toArray())
                .bytes(0x0D);
        rows.forEach(bytes::raw);
        return bytes.bytes(0x1A).toArray();
    }
}
