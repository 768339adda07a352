package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.reader.layer.Findings;

/** The {@code .dbf}: one row of attributes for each shape, in the order of the {@code .shp} (Technical Description, Organization of the dBASE File). */
final class DbfTable {
    private static final byte LIVE = ' ';
    private static final byte DELETED = '*';

    private record Column(DbfField field, ValueFormat format) {}

    private final ByteBuffer bytes;
    private final DbfHeader header;
    private final List<Column> columns;
    private final ShownFile dbf;
    private final Findings findings;

    private DbfTable(ByteBuffer bytes, DbfHeader header, List<Column> columns, ShownFile dbf, Findings findings) {
        this.bytes = bytes;
        this.header = header;
        this.columns = columns;
        this.dbf = dbf;
        this.findings = findings;
    }

    /**
     * Reads header and columns.
     *
     * @param cpg the file that names the encoding of its texts, when there is one
     * @throws org.fallrule.document.UnusableInput when the file's structure contradicts itself
     */
    static DbfTable open(ShownFile dbf, Optional<ShownFile> cpg, Findings findings) {
        ByteBuffer bytes = dbf.bytes();
        DbfHeader header = DbfHeader.read(bytes, dbf, findings);
        Charset charset = new CodePage(dbf, findings).charset(cpg, header.language());
        List<Column> columns = new ArrayList<>();
        for (DbfField field : DbfFields.read(bytes, header, charset, dbf)) {
            Optional<ValueFormat> format = ValueFormat.of(field, charset);
            format.ifPresent(known -> columns.add(new Column(field, known)));
            if (format.isEmpty()) {
                noteType(field, dbf, findings);
            }
        }
        return new DbfTable(bytes, header, columns, dbf, findings);
    }

    /**
     * Checks that there is a row for each shape.
     *
     * @param shapes number of records in the main file
     * @param shp the main file's name
     * @throws org.fallrule.document.UnusableInput when there is not: attributes may then belong to other shapes
     */
    void requireRows(int shapes, String shp) {
        if (header.rows() != shapes) {
            throw dbf.unusable(
                    "has " + header.rows() + " rows where " + shp + " has " + shapes
                            + " shapes, so attributes may belong to other shapes; wanted one row for each; export the layer again");
        }
    }

    /** The names of the columns, in the file's order. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        columns.forEach(column -> names.add(column.field().name()));
        return names;
    }

    /** Whether the row, counted from 0, is marked as deleted. */
    boolean deleted(int row) {
        return bytes.get(header.rowStart(row)) == DELETED;
    }

    /**
     * The values of a row by column name, columns without a value left out.
     *
     * @param row the row, counted from 0
     * @param label what the feature is called in notes
     */
    Map<String, Object> columns(int row, String label) {
        noteMark(row, label);
        Map<String, Object> values = new LinkedHashMap<>();
        for (Column column : columns) {
            DbfField field = column.field();
            byte[] raw = new byte[field.length()];
            bytes.get(header.rowStart(row) + field.start(), raw);
            column.format()
                    .read(raw, says -> findings.noteFeature(place(label).field(field.name()), says))
                    .ifPresent(value -> values.put(field.name(), value));
        }
        return values;
    }

    private void noteMark(int row, String label) {
        byte mark = bytes.get(header.rowStart(row));
        if (mark != LIVE) {
            findings.noteFeature(
                    place(label),
                    "its row begins with the byte " + (mark & 0xFF)
                            + "; wanted a blank, or * for a deleted row; read as a row that is not deleted");
        }
    }

    private Place place(String label) {
        return dbf.place().feature(label);
    }

    private static void noteType(DbfField field, ShownFile dbf, Findings findings) {
        findings.note(
                dbf.place().field(field.name()),
                "is a column of type " + printable(field.type())
                        + "; wanted C, N, F, L or D; it was left out; change its type if it is needed");
    }

    private static String printable(char type) {
        return type > ' ' && type < 127 ? String.valueOf(type) : "byte " + (int) type;
    }
}
