package org.fallrule.site;

import java.util.Optional;
import org.fallrule.document.Place;
import org.locationtech.jts.geom.Geometry;

/**
 * One thing in the plan.
 *
 * @param role what it stands for
 * @param id its name in the plan, or one made from its role and position when the plan names none
 * @param geometry its geometry in the local metric frame; Z, where there is any, in metres in the plan's vertical datum
 * @param attributes what the plan says of it
 * @param origin the file and feature it came from
 */
public record Feature(Role role, String id, Geometry geometry, Attributes attributes, Place origin) {

    /** Of what tells features apart; geometry and attributes cost too much to go into it. */
    @Override
    public int hashCode() {
        return id.hashCode();
    }

    public <T> Optional<T> get(Attribute<T> attribute) {
        return attributes.get(attribute);
    }

    /** The same thing, of which the plan says this. */
    public Feature with(Attributes others) {
        return new Feature(role, id, geometry, others, origin);
    }

    /** Whether it stands only on paper: a part of the drain that is proposed, or of which the plan does not say what it is. */
    public boolean isDesigned() {
        return role.isOfDrain() && get(Attribute.STATUS).orElse("proposed").equals("proposed");
    }

    /** Whether it was a part of the drain and carries water no more. A utility that is said to be abandoned may be live. */
    public boolean isAbandoned() {
        return role.isOfDrain() && get(Attribute.STATUS).orElse("").equals("abandoned");
    }

    /** How a sentence names it: {@code outfall OF-1}; a utility by its kind: {@code water service U-2}. */
    public String spoken() {
        String what = get(Attribute.KIND)
                .filter(kind -> role == Role.UTILITY && !kind.equals("unknown"))
                .map(kind -> kind.replace('_', ' '))
                .orElse(role.spoken());
        return what + " " + id;
    }
}
