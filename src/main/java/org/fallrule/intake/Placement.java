package org.fallrule.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.site.Role;

/**
 * A table, or a part of it, taken for a role.
 *
 * @param role the role
 * @param table the table
 * @param features the features that are taken
 * @param where the condition that takes them; blank for all
 * @param codes the column that tells the parts of the table apart
 * @param kinds what the codes in it say of the kind; blank where they leave it open
 * @param kind the kind of every feature, where the name of the layer says it
 * @param sureness how sure it is
 * @param because what it rests on
 */
record Placement(
        Role role,
        LooseLayers.Table table,
        List<RawFeature> features,
        String where,
        Optional<String> codes,
        Map<String, String> kinds,
        Optional<String> kind,
        Sureness sureness,
        String because) {

    /** The whole of a table. */
    static Placement whole(
            LooseLayers.Table table, Meaning meaning, List<RawFeature> features, Sureness sureness, String because) {
        return new Placement(
                meaning.role().orElseThrow(),
                table,
                features,
                "",
                Optional.empty(),
                Map.of(),
                meaning.kind(),
                sureness,
                because);
    }
}
