package org.fallrule.reader;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.reader.layer.RawFeature;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.locationtech.jts.io.WKBWriter;

/**
 * Features of one layer, each packed into bytes: the geometry as well-known binary (OGC 06-103r4, clause 8), the columns by their
 * number, words that come again by theirs. A utility line of four vertices with five columns takes some 180 bytes so, and ten times
 * as much as objects. Packing is for one thread, unpacking for any.
 */
final class PackedFeatures {
    /** Words that get a number; of columns such as names, in which each differs, the rest is written out. */
    private static final int MOST_WORDS = 4096;

    /** Columns are told apart by two bytes. */
    static final int MOST_COLUMNS = 0xFFFF;

    /** Z is not a number where there is none. */
    private static final int DIMENSIONS = 3;

    private static final int LONGEST_WORD = 64;
    private static final String LABEL = "feature ";

    private enum Kind {
        WORD,
        TEXT,
        WHOLE,
        NUMBER,
        FLAG,
        DAY
    }

    private static final List<Kind> KINDS = List.of(Kind.values());

    private final List<String> columns = new ArrayList<>();
    private final Map<String, Integer> columnNumbers = new HashMap<>();
    private final List<String> words = new ArrayList<>();
    private final Map<String, Integer> wordNumbers = new HashMap<>();
    private int packed;

    /** A feature in bytes, with its place in the order of packing. */
    byte[] pack(RawFeature feature, Geometry geometry) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(192);
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(packed);
            packed++;
            label(feature.label(), out);
            out.writeShort(feature.columns().size());
            for (Map.Entry<String, Object> column : feature.columns().entrySet()) {
                out.writeShort(number(column.getKey(), columns, columnNumbers));
                value(column.getValue(), out);
            }
            out.write(new WKBWriter(DIMENSIONS).write(geometry));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Whether the features have more different columns than can be told apart. */
    boolean hasTooManyColumns() {
        return columns.size() > MOST_COLUMNS;
    }

    /** The place of a feature in the order of packing. */
    static int order(byte[] feature) {
        return java.nio.ByteBuffer.wrap(feature).getInt();
    }

    RawFeature unpack(byte[] feature) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(feature))) {
            in.readInt();
            String label = label(in);
            Map<String, Object> values = new LinkedHashMap<>();
            for (int left = in.readUnsignedShort(); left > 0; left--) {
                String column = columns.get(in.readUnsignedShort());
                values.put(column, value(in));
            }
            return new RawFeature(label, Optional.of(new WKBReader().read(in.readAllBytes())), values);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ParseException e) {
            throw new IllegalStateException("what was packed is a geometry", e);
        }
    }

    private static int number(String word, List<String> all, Map<String, Integer> numbers) {
        return numbers.computeIfAbsent(word, fresh -> {
            all.add(fresh);
            return all.size() - 1;
        });
    }

    private static void label(String label, DataOutputStream out) throws IOException {
        String rest = label.startsWith(LABEL) ? label.substring(LABEL.length()) : "";
        boolean counted = rest.matches("[1-9][0-9]{0,8}");
        out.writeBoolean(counted);
        if (counted) {
            out.writeInt(Integer.parseInt(rest));
        } else {
            text(label, out);
        }
    }

    private static String label(DataInputStream in) throws IOException {
        return in.readBoolean() ? LABEL + in.readInt() : text(in);
    }

    private void value(Object value, DataOutputStream out) throws IOException {
        if (value instanceof Long whole) {
            kind(Kind.WHOLE, out).writeLong(whole);
        } else if (value instanceof Double number) {
            kind(Kind.NUMBER, out).writeDouble(number);
        } else if (value instanceof Boolean flag) {
            kind(Kind.FLAG, out).writeBoolean(flag);
        } else if (value instanceof LocalDate day) {
            kind(Kind.DAY, out).writeLong(day.toEpochDay());
        } else {
            words(String.valueOf(value), out);
        }
    }

    private void words(String text, DataOutputStream out) throws IOException {
        boolean numbered =
                wordNumbers.containsKey(text) || (words.size() < MOST_WORDS && text.length() <= LONGEST_WORD);
        if (numbered) {
            kind(Kind.WORD, out).writeShort(number(text, words, wordNumbers));
        } else {
            text(text, kind(Kind.TEXT, out));
        }
    }

    private Object value(DataInputStream in) throws IOException {
        return switch (KINDS.get(in.readByte())) {
            case WORD -> words.get(in.readUnsignedShort());
            case TEXT -> text(in);
            case WHOLE -> in.readLong();
            case NUMBER -> in.readDouble();
            case FLAG -> in.readBoolean();
            case DAY -> LocalDate.ofEpochDay(in.readLong());
        };
    }

    private static DataOutputStream kind(Kind kind, DataOutputStream out) throws IOException {
        out.writeByte(KINDS.indexOf(kind));
        return out;
    }

    private static void text(String text, DataOutputStream out) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
    }
}
