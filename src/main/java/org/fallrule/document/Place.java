package org.fallrule.document;

/**
 * Where in the input something stands: a file, and as far as known its line and column, or its feature and attribute column.
 *
 * @param file path as the user knows it, never empty
 * @param line 1-based line, 0 when not known
 * @param column 1-based character column, 0 when not known
 * @param feature what the user calls the feature, such as {@code feature 14} or {@code P-2}; empty when none
 * @param field the attribute column or key; empty when none
 */
public record Place(String file, int line, int column, String feature, String field) {

    public static Place of(String file) {
        return new Place(file, 0, 0, "", "");
    }

    public Place at(int newLine, int newColumn) {
        return new Place(file, newLine, newColumn, feature, field);
    }

    public Place feature(String newFeature) {
        return new Place(file, line, column, newFeature, field);
    }

    public Place field(String newField) {
        return new Place(file, line, column, feature, newField);
    }

    /** {@code file:line}, the form that a report gives as the source of a rule's value. */
    public String fileAndLine() {
        return line > 0 ? file + ":" + line : file;
    }

    /** {@code marks.shp: feature 14: depth} or {@code rules/baseline.yaml:12:5}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(fileAndLine());
        if (line > 0 && column > 0) {
            text.append(':').append(column);
        }
        if (!feature.isEmpty()) {
            text.append(": ").append(feature);
        }
        if (!field.isEmpty()) {
            text.append(": ").append(field);
        }
        return text.toString();
    }
}
