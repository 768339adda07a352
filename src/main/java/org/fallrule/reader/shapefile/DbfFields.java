package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The columns of a {@code .dbf}: field descriptors from byte 32 to the mark 0x0D. */
final class DbfFields {
    private static final byte TERMINATOR = 0x0D;
    private static final int DELETION_MARK = 1;

    private DbfFields() {}

    /**
     * Reads the descriptors.
     *
     * @throws org.fallrule.document.UnusableInput when names are missing or double, or lengths do not add up to the row's
     */
    static List<DbfField> read(ByteBuffer bytes, DbfHeader header, Charset charset, ShownFile dbf) {
        List<DbfField> fields = new ArrayList<>();
        int start = DELETION_MARK;
        int at = DbfHeader.LENGTH;
        while (at + DbfField.DESCRIPTOR <= header.headerLength() && bytes.get(at) != TERMINATOR) {
            DbfField field = DbfField.read(bytes, at, start, charset);
            fields.add(field);
            start = field.end();
            at += DbfField.DESCRIPTOR;
        }
        requireNames(fields, dbf);
        requireLength(fields.size(), start, header, dbf);
        return fields;
    }

    private static void requireNames(List<DbfField> fields, ShownFile dbf) {
        Set<String> names = new HashSet<>();
        for (DbfField field : fields) {
            String name = field.name();
            if (name.isEmpty() || !names.add(name)) {
                String found = name.isEmpty() ? "has no name" : "has the name " + name + ", as another column has";
                throw dbf.unusable("its column " + (fields.indexOf(field) + 1) + " " + found
                        + "; wanted a name for each that no other has; rename it");
            }
        }
    }

    private static void requireLength(int count, int length, DbfHeader header, ShownFile dbf) {
        if (length != header.rowLength()) {
            throw dbf.unusable("its " + count + " columns and the deletion mark take " + length
                    + " bytes, but its header says that a row has " + header.rowLength()
                    + "; wanted the two to agree; export the layer again");
        }
    }
}
