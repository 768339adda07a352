package org.fallrule.report;

import java.util.Optional;
import java.util.Set;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/**
 * Who marks a utility before anybody digs. The members of a one-call centre (811) mark what is theirs; lines that belong to the
 * lot, such as irrigation, yard lighting, propane and services past the meter, are marked by nobody unless the owner sees to it.
 * Common practice, after the centres' own notices; California's law leaves out drains and sewers that are not under pressure
 * (Government Code 4216).
 */
public enum WhoToCall {
    ONE_CALL("one-call 811"),
    OWNER("the owner or a private locator"),
    BOTH("one-call 811, and the owner of a private line");

    private static final Set<String> PRIVATE = Set.of("irrigation", "lighting", "propane");

    private static final Set<String> PART_PRIVATE =
            Set.of("water_service", "sanitary", "storm", "reclaimed", "unknown");

    private final String words;

    WhoToCall(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public static WhoToCall of(Feature utility) {
        String kind = utility.get(Attribute.KIND).orElse("unknown");
        Optional<Boolean> isPrivate = utility.get(Attribute.PRIVATE);
        if (isPrivate.isPresent()) {
            return isPrivate.get() ? OWNER : ONE_CALL;
        }
        if (PRIVATE.contains(kind)) {
            return OWNER;
        }
        return PART_PRIVATE.contains(kind) ? BOTH : ONE_CALL;
    }
}
