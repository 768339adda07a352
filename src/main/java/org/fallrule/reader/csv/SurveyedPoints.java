package org.fallrule.reader.csv;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Reads a table of points: a line of column names, then a line for each point, parted by commas, semicolons or tabs, quoted as RFC 4180
 * says. The position stands in columns that are named for it ({@link PositionColumns}); every column, those too, is an attribute. A
 * column whose every value is a number holds numbers, any other texts; so a code such as {@code 007} stays a text.
 */
public final class SurveyedPoints {
    private static final GeometryFactory POINTS = new GeometryFactory();

    private final Place file;
    private final CsvTable table;
    private final List<CsvColumn> columns;
    private final PositionColumns position;
    private final Findings findings;
    private long count;

    private SurveyedPoints(Place file, CsvTable table, Findings findings) {
        this.file = file;
        this.table = table;
        this.columns = CsvColumn.of(table);
        this.position = PositionColumns.of(table.header(), file);
        this.findings = findings;
    }

    /**
     * The layer that a table holds. Features are labelled {@code feature N}, N counting the points from 1. Elevations stay a column,
     * such as {@code elevation} or {@code z}, since their unit is said of columns.
     *
     * @param csv the file: UTF-8 or UTF-16 with a byte-order mark, else UTF-8, else windows-1252 with a note
     * @param shownAs its path as the user knows it, used in every place
     * @return the layer; its {@code crs} is {@code OGC:CRS84} for longitude and latitude, else empty
     * @throws UnusableInput when the columns of the position are missing or two could be it, or a line is broken, with its number
     */
    public static RawLayer read(Path csv, String shownAs) {
        List<RawFeature> features = new ArrayList<>();
        return stream(csv, shownAs, features::add).with(features);
    }

    /**
     * Reads a table as {@link #read} does, and keeps none of its features.
     *
     * @param features is handed each feature in file order
     * @return the layer without its features
     */
    public static RawLayer stream(Path csv, String shownAs, Consumer<RawFeature> features) {
        Place file = Place.of(shownAs);
        Findings findings = new Findings();
        CsvTable table = CsvTable.parse(CsvText.of(csv, file, findings), file);
        return new SurveyedPoints(file, table, findings).layer(features);
    }

    private RawLayer layer(Consumer<RawFeature> features) {
        table.read(row -> {
            count++;
            features.accept(new RawFeature("feature " + count, point(row), attributes(row)));
        });
        findings.refuseIfFaulty();
        return new RawLayer(
                file.file(), position.crs(), List.of(), findings.notes(), new LinkedHashSet<>(table.header()));
    }

    private Map<String, Object> attributes(CsvTable.Row row) {
        Map<String, Object> attributes = new LinkedHashMap<>();
        for (int index = 0; index < columns.size(); index++) {
            CsvColumn column = columns.get(index);
            column.value(row.cells().get(index)).ifPresent(value -> attributes.put(column.name(), value));
        }
        return attributes;
    }

    private Optional<Geometry> point(CsvTable.Row row) {
        try {
            Optional<Double> x = number(row, position.x());
            Optional<Double> y = number(row, position.y());
            if (x.isPresent() != y.isPresent()) {
                throw new UnusableInput(
                        file.at(row.line(), 0),
                        "has only one of " + name(position.x()) + " and " + name(position.y())
                                + "; give both, or neither for a point without a place");
            }
            return x.map(known -> POINTS.createPoint(new Coordinate(known, y.orElseThrow())));
        } catch (UnusableInput unusable) {
            findings.faults(unusable);
            return Optional.empty();
        }
    }

    private Optional<Double> number(CsvTable.Row row, int column) {
        String cell = row.cells().get(column).strip();
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(CsvColumn.number(cell, table.separator())
                .orElseThrow(() -> new UnusableInput(
                        file.at(row.line(), 0).field(name(column)),
                        "\"" + shortened(cell) + "\" is no number; wanted one such as 2700010.25, without unit and"
                                + " without marks between thousands")));
    }

    private String name(int column) {
        return table.header().get(column);
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
