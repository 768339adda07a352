package org.fallrule.intake;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;

/**
 * A site.yaml that is to be, and what there is to say of it.
 *
 * @param site the site's name
 * @param profile the profile of layers that it builds on
 * @param profileOpen what that profile leaves open
 * @param crs the system of layers that do not say theirs, where it is wanted
 * @param datum the vertical datum
 * @param units the units of numbers that have none
 * @param survey how good the survey is
 * @param absent the roles that the lot has none of
 * @param layers the layers
 * @param open questions that belong to no line
 * @param told what else a person should know
 * @param unreadable what could not be read
 * @param asked how many questions there were
 * @param answered how many of them were answered
 */
public record Draft(
        String site,
        Optional<String> profile,
        List<Fault> profileOpen,
        Optional<Statement> crs,
        Statement datum,
        List<Statement> units,
        List<Statement> survey,
        Statement absent,
        List<DraftLayer> layers,
        List<OpenQuestion> open,
        List<String> told,
        List<Fault> unreadable,
        int asked,
        int answered) {

    /**
     * A question that belongs to no line of a layer.
     *
     * @param question the question
     * @param offered lines that may answer it
     */
    public record OpenQuestion(String question, List<String> offered) {}

    /** The text of site.yaml. */
    public String yaml() {
        return DraftText.write(this);
    }
}
