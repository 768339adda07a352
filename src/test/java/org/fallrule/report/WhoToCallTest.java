package org.fallrule.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.fallrule.document.Place;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.GeometryFactory;

/** Common practice, after the notices of one-call centres; no single published list. */
class WhoToCallTest {
    private static WhoToCall of(Attributes attributes) {
        return WhoToCall.of(new Feature(
                Role.UTILITY, "U-1", new GeometryFactory().createLineString(), attributes, Place.of("marks.shp")));
    }

    @ParameterizedTest
    @CsvSource({
        "gas, ONE_CALL",
        "electric, ONE_CALL",
        "communication, ONE_CALL",
        "water_main, ONE_CALL",
        "water_service, BOTH",
        "sanitary, BOTH",
        "storm, BOTH",
        "reclaimed, BOTH",
        "unknown, BOTH",
        "irrigation, OWNER",
        "lighting, OWNER",
        "propane, OWNER",
    })
    void membersMarkWhatIsTheirsAndTheOwnerTheRest(String kind, WhoToCall who) {
        assertThat(of(Attributes.none().with(Attribute.KIND, kind))).isEqualTo(who);
    }

    @Test
    void aLineThatThePlanCallsPrivateIsTheOwners() {
        Attributes gas = Attributes.none().with(Attribute.KIND, "gas");

        assertThat(of(gas.with(Attribute.PRIVATE, true))).isEqualTo(WhoToCall.OWNER);
        assertThat(of(gas.with(Attribute.PRIVATE, false))).isEqualTo(WhoToCall.ONE_CALL);
        assertThat(of(Attributes.none().with(Attribute.KIND, "irrigation").with(Attribute.PRIVATE, false)))
                .isEqualTo(WhoToCall.ONE_CALL);
    }

    @Test
    void ofALineOfUnknownKindBothAreAsked() {
        assertThat(of(Attributes.none())).isEqualTo(WhoToCall.BOTH);
    }
}
