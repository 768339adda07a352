package org.fallrule.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

class SiteTest {

    private static Feature feature(Role role, String id, Attributes attributes) {
        return new Feature(
                role, id, new GeometryFactory().createPoint(new Coordinate(0, 0)), attributes, Place.of("a.geojson"));
    }

    private static Feature lot(String id, boolean own) {
        return feature(Role.LOT, id, Attributes.none().with(Attribute.OWN, own));
    }

    private static Feature lot(String id) {
        return feature(Role.LOT, id, Attributes.none());
    }

    private static Site site(Map<Role, Layer> layers) {
        return new Site(
                "s",
                "S",
                Optional.empty(),
                Optional.empty(),
                "local",
                Optional.empty(),
                local -> local,
                Survey.UNKNOWN,
                layers,
                List.of(),
                List.of());
    }

    private static Site lots(Feature... lots) {
        return site(Map.of(Role.LOT, new Layer.Supplied(Arrays.asList(lots), List.of("lot.geojson"))));
    }

    @Test
    void theOwnLotIsTheOneMarkedOrTheOnlyOneThereIs() {
        assertThat(lots(lot("A", true), lot("B", false)).ownLot())
                .map(Feature::id)
                .contains("A");
        assertThat(lots(lot("A")).ownLot()).map(Feature::id).contains("A");
        assertThat(lots(lot("A"), lot("B")).ownLot()).isEmpty();
        assertThat(lots(lot("A", true), lot("B", true)).ownLot()).isEmpty();
        assertThat(lots().ownLot()).isEmpty();
        assertThat(site(Map.of()).ownLot()).isEmpty();
    }

    @Test
    void aSingleLotMarkedAsNotOwnIsNotTheOwnLot() {
        assertThat(lots(lot("A", false)).ownLot()).isEmpty();
    }

    @Test
    void silenceIsNotAbsence() {
        Site site = site(
                Map.of(Role.WELL, new Layer.StatedAbsent(Place.of("site.yaml").at(9, 1))));

        assertThat(site.layer(Role.WELL)).isInstanceOf(Layer.StatedAbsent.class);
        assertThat(site.layer(Role.TREE)).isEqualTo(new Layer.NotSupplied());
        assertThat(site.features(Role.TREE)).isEmpty();
    }

    @Test
    void layersStandInTheOrderOfTheRolesAndCannotBeChangedFromOutside() {
        Map<Role, Layer> given = new HashMap<>();
        for (Role role : Role.values()) {
            given.put(role, new Layer.NotSupplied());
        }
        Site site = site(given);
        given.clear();

        assertThat(site.layers().keySet()).containsExactly(Role.values());
    }

    @ParameterizedTest
    @CsvSource({
        "PIPE, proposed, true",
        "PIPE, existing, false",
        "PIPE, as_built, false",
        "PIPE, abandoned, false",
        "PIPE, '', true",
        "OUTFALL, proposed, true",
        "UTILITY, proposed, false",
        "WALK, '', false",
    })
    void onlyPartsOfTheDrainThatAreNotBuiltStandOnPaper(Role role, String status, boolean designed) {
        Attributes attributes =
                status.isEmpty() ? Attributes.none() : Attributes.none().with(Attribute.STATUS, status);

        assertThat(feature(role, "X", attributes).isDesigned()).isEqualTo(designed);
    }

    @Test
    void aUtilityIsSpokenOfByItsKind() {
        Attributes water = Attributes.none().with(Attribute.KIND, "water_service");
        Attributes unknown = Attributes.none().with(Attribute.KIND, "unknown");

        assertThat(feature(Role.UTILITY, "U-2", water).spoken()).isEqualTo("water service U-2");
        assertThat(feature(Role.UTILITY, "U-3", unknown).spoken()).isEqualTo("utility U-3");
        assertThat(feature(Role.WATER_BODY, "B-1", water).spoken()).isEqualTo("water body B-1");
    }

    @Test
    void aWaiverHoldsOnItsLastDayAndNotAfter() {
        LocalDate last = LocalDate.of(2027, 6, 1);
        Waiver waiver = new Waiver(
                "r",
                Optional.empty(),
                "county engineer",
                last.minusYears(1),
                "x",
                Optional.of(last),
                Place.of("site.yaml"));

        assertThat(waiver.expired(last)).isFalse();
        assertThat(waiver.expired(last.plusDays(1))).isTrue();
    }

    @Test
    void everyRoleIsFoundByItsWordAndOnlyByIt() {
        assertThat(Role.words())
                .allSatisfy(word -> assertThat(Role.named(word)).map(Role::word).contains(word));
        assertThat(Role.named("PIPE")).isEmpty();
        assertThat(Role.named("water body")).isEmpty();
        assertThat(Attribute.of(Role.WALK))
                .extracting(Attribute::name)
                .containsExactly("id", "access", "surface", "width", "horizontal_accuracy", "vertical_accuracy");
    }

    @Test
    void anAbandonedUtilityCountsLikeAnyOther() {
        Attributes abandoned = Attributes.none().with(Attribute.STATUS, "abandoned");

        assertThat(feature(Role.UTILITY, "U-1", abandoned).isAbandoned()).isFalse();
        assertThat(feature(Role.INLET, "CB-1", abandoned).isAbandoned()).isTrue();
    }
}
