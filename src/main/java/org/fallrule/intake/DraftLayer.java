package org.fallrule.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.site.Role;

/**
 * What the draft of site.yaml says of one layer.
 *
 * @param role what it is taken for
 * @param file its file
 * @param table the table in it, where it holds several
 * @param counted how many features of what form
 * @param where the condition that takes them; blank for all
 * @param fields the columns of attributes
 * @param units the units of columns
 * @param values what values stand for, by attribute
 * @param all what holds for every feature
 * @param sureness how sure it is what it stands for
 * @param because what that rests on
 */
public record DraftLayer(
        Role role,
        String file,
        Optional<String> table,
        String counted,
        String where,
        List<Statement> fields,
        List<Statement> units,
        Map<String, List<Statement>> values,
        List<Statement> all,
        Sureness sureness,
        String because) {

    /** A layer of which only the file is said. */
    static DraftLayer plain(
            Role role, String file, Optional<String> table, String counted, Sureness sureness, String because) {
        return new DraftLayer(
                role, file, table, counted, "", List.of(), List.of(), Map.of(), List.of(), sureness, because);
    }

    /** The file, and the table where the file holds several. */
    public String source() {
        return table.map(name -> file + "/" + name).orElse(file);
    }

    boolean isFileAlone() {
        return table.isEmpty()
                && where.isEmpty()
                && fields.isEmpty()
                && units.isEmpty()
                && values.isEmpty()
                && all.isEmpty();
    }
}
