package org.fallrule.reader.frame;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** Tells what kind of definition a text is, a code or well-known text, and has it read. */
final class DefinitionText {
    private static final Pattern CODE = Pattern.compile("([A-Za-z]{2,10})::?([A-Za-z0-9]{1,10})");
    private static final Pattern JSON = Pattern.compile("(?s)\\{.*");
    private static final Pattern PROJ = Pattern.compile("(?s)\\+(proj|init)=.*");

    /** The second edition of well-known text (ISO 19162) closes with the code of the whole system, where it has one. */
    private static final Pattern CODED_WKT2 = Pattern.compile(
            "(?s)(PROJCRS|GEOGCRS|GEODCRS)\\s*\\[.*\\bID\\s*\\[\\s*\"EPSG\"\\s*,\\s*\"?(\\d{1,6})\"?\\s*]\\s*]");

    private static final Pattern WKT = Pattern.compile("(?s)[A-Za-z0-9_]+\\s*[\\[(].*");

    /** Letters; what GIS programs write has some 3,000. */
    private static final int LONGEST_WKT2 = 20_000;

    private DefinitionText() {}

    static CoordinateSystem read(String text, Place where) {
        String trimmed = text.replaceFirst("^\uFEFF", "").strip();
        Matcher code = CODE.matcher(trimmed);
        if (code.matches()) {
            return byCode(code.group(1).toUpperCase(Locale.ROOT), code.group(2).toUpperCase(Locale.ROOT), where);
        }
        Matcher coded = CODED_WKT2.matcher(trimmed);
        if (trimmed.length() < LONGEST_WKT2 && coded.matches()) {
            return byCode("EPSG", coded.group(2), where);
        }
        refuseOtherNotations(trimmed, where);
        if (WKT.matcher(trimmed).matches()) {
            return byGivenWkt(WktText.split(trimmed, where), where);
        }
        throw new UnusableInput(
                where,
                "\"" + WktText.shortened(trimmed)
                        + "\" is no coordinate reference system; wanted a code such as EPSG:2264,"
                        + " or the well-known text of a .prj file");
    }

    private static void refuseOtherNotations(String text, Place where) {
        boolean json = JSON.matcher(text).matches();
        if (json || PROJ.matcher(text).matches()) {
            throw new UnusableInput(
                    where,
                    "this is " + (json ? "PROJJSON" : "a PROJ string")
                            + ", which is not read; wanted PROJCS or GEOGCS (WKT1), or a code such as EPSG:2264, which"
                            + " may stand in its place");
        }
    }

    private static CoordinateSystem byCode(String authority, String code, Place where) {
        if (authority.equals("OGC") && code.equals("CRS84")) {
            return degrees("WGS 84 (longitude, latitude)");
        }
        if (!authority.equals("EPSG") || !code.matches("[0-9]{1,6}")) {
            throw new UnusableInput(
                    where,
                    "\"" + authority + ":" + code
                            + "\" is not a known code; wanted EPSG: and its number, such as EPSG:2264,"
                            + " or OGC:CRS84");
        }
        int number = Integer.parseInt(code);
        Optional<CodeTable.Row> row = CodeTable.find(number);
        return row.isPresent() ? byRow(row.get(), where) : EpsgDatabase.find(number, where);
    }

    private static CoordinateSystem byRow(CodeTable.Row row, Place where) {
        if (row.isGeographic()) {
            return degrees(row.name());
        }
        return byWkt(WktText.split(row.wkt(), where), Optional.of(row.area()), where);
    }

    private static CoordinateSystem byGivenWkt(WktText wkt, Place where) {
        if (WebMercator.isMeant(wkt.horizontal())) {
            return byCode("EPSG", String.valueOf(WebMercator.CODE), where);
        }
        WebMercator.refuseOtherExtension(wkt.horizontal(), where);
        return byWkt(wkt, Optional.empty(), where);
    }

    private static CoordinateSystem degrees(String name) {
        return new CoordinateSystem(
                name, OptionalDouble.empty(), OptionalDouble.empty(), AreaOfUse.WORLD, Unprojection.NONE);
    }

    private static CoordinateSystem byWkt(WktText wkt, Optional<AreaOfUse> area, Place where) {
        return PlainDefinition.read(wkt.horizontal(), wkt.heightUnit(), area, where)
                .orElseGet(() ->
                        new Definition(WktParsing.parse(wkt.horizontal(), where), where).system(wkt.heightUnit(), area))
                .withHeightsOn(wkt.heightDatum());
    }
}
