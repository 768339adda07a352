package org.fallrule.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/**
 * Writes a layer as a shapefile with its companions, as the ESRI Shapefile Technical Description (July 1998) lays it out. Heights
 * stand in a column of the table.
 */
final class MadeShapefile {
    private static final int HEADER = 100;

    private final MadePlace place;
    private final List<MadeFeature> features;
    private final int type;

    private MadeShapefile(MadePlace place, List<MadeFeature> features) {
        this.place = place;
        this.features = features;
        this.type = switch (features.get(0).kind()) {
            case POINT -> 1;
            case LINE -> 3;
            case AREA -> 5;
        };
    }

    static void write(Path folder, MadePlace place, String name, List<MadeFeature> features) throws IOException {
        MadeShapefile made = new MadeShapefile(place, features);
        ByteArrayOutputStream main = new ByteArrayOutputStream();
        ByteArrayOutputStream index = new ByteArrayOutputStream();
        for (int i = 0; i < features.size(); i++) {
            byte[] content = made.content(features.get(i));
            index.write(big(8, (HEADER + main.size()) / 2, content.length / 2));
            main.write(big(8, i + 1, content.length / 2));
            main.write(content);
        }
        Files.write(folder.resolve(name + ".shp"), made.withHeader(main));
        Files.write(folder.resolve(name + ".shx"), made.withHeader(index));
        Files.write(folder.resolve(name + ".dbf"), made.table());
        Files.writeString(folder.resolve(name + ".cpg"), "UTF-8");
        Files.writeString(folder.resolve(name + ".prj"), MadeGrid.esri(place.grid()));
    }

    private byte[] content(MadeFeature feature) {
        int vertices = feature.vertices();
        ByteBuffer bytes =
                ByteBuffer.allocate(type == 1 ? 20 : 48 + 16 * vertices).order(ByteOrder.LITTLE_ENDIAN);
        bytes.putInt(type);
        if (type != 1) {
            bytes.position(36).putInt(1).putInt(vertices).putInt(0);
        }
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (int i = 0; i < vertices; i++) {
            Coordinate at = place.onGrid(feature, i);
            bytes.putDouble(at.x).putDouble(at.y);
            box = new double[] {
                Math.min(box[0], at.x), Math.min(box[1], at.y), Math.max(box[2], at.x), Math.max(box[3], at.y)
            };
        }
        if (type != 1) {
            bytes.position(4);
            for (double side : box) {
                bytes.putDouble(side);
            }
        }
        return bytes.array();
    }

    private byte[] withHeader(ByteArrayOutputStream records) {
        ByteBuffer bytes = ByteBuffer.allocate(HEADER + records.size());
        bytes.putInt(9994).putInt(24, bytes.capacity() / 2);
        bytes.order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000).putInt(32, type);
        return bytes.position(HEADER).put(records.toByteArray()).array();
    }

    private byte[] table() throws IOException {
        boolean heights = features.get(0).z(0) != 0;
        List<String> names = new ArrayList<>();
        features.forEach(feature -> feature.properties().keySet().stream()
                .filter(name -> !names.contains(name))
                .forEach(names::add));
        if (heights) {
            names.add("elevation");
        }
        int width = 14;
        int header = 32 + 32 * names.size() + 1;
        int row = 1 + width * names.size();
        ByteBuffer bytes = ByteBuffer.allocate(header).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put((byte) 3).put(new byte[] {126, 1, 1}).putInt(features.size());
        bytes.putShort((short) header).putShort((short) row).position(32);
        for (String name : names) {
            byte[] field = new byte[32];
            byte[] letters = tenLetters(name).getBytes(StandardCharsets.US_ASCII);
            System.arraycopy(letters, 0, field, 0, letters.length);
            boolean number = (heights && name.equals("elevation"))
                    || features.stream().allMatch(each -> each.properties().get(name) instanceof Number);
            field[11] = (byte) (number ? 'N' : 'C');
            field[16] = (byte) width;
            field[17] = (byte) (number ? 3 : 0);
            bytes.put(field);
        }
        bytes.put((byte) 13);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes.array());
        for (MadeFeature feature : features) {
            out.write(' ');
            for (String name : names) {
                Object value = (heights && name.equals("elevation"))
                        ? Double.valueOf(feature.z(0))
                        : feature.properties().getOrDefault(name, "");
                out.write(cell(value, width).getBytes(StandardCharsets.US_ASCII));
            }
        }
        out.write(26);
        return out.toByteArray();
    }

    /** Names as offices shorten them for a table whose columns have ten letters. */
    private static String tenLetters(String name) {
        return switch (name) {
            case "invert_down" -> "inv_dn";
            case "grate_length" -> "gratelen";
            case "grate_width" -> "gratewid";
            default -> name;
        };
    }

    private static String cell(Object value, int width) {
        return value instanceof Number number
                ? String.format(Locale.ROOT, "%" + width + ".3f", number.doubleValue())
                : String.format(Locale.ROOT, "%-" + width + "s", value);
    }

    private static byte[] big(int size, int... numbers) {
        ByteBuffer bytes = ByteBuffer.allocate(size);
        for (int number : numbers) {
            bytes.putInt(number);
        }
        return bytes.array();
    }
}
