package org.fallrule.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class TermsTest {
    private static final Place RULE = Place.of("rules.yaml").at(12, 5);
    private static final Set<Attribute<?>> SIZE = Set.of(Attribute.DIAMETER);
    private static final Set<Attribute<?>> OTHERS = Set.of(Attribute.MATERIAL, Attribute.QUALITY);

    private static final Parameter<Selection> FROM = Parameter.features("from", "pipes", Role.PIPE);
    private static final Parameter<Condition> HOLDS = Parameter.condition("holds", FROM, Map.of(), "what must hold");
    private static final Parameter<AttributeList> SAYS = Parameter.attributes("says", FROM, "what it must say");
    private static final Parameter<Limits> AT_LEAST =
            Parameter.limit("at_least", Bound.AT_LEAST, Dimension.LENGTH, "the least");
    private static final Parameter<Quantity> WITHIN = Parameter.quantity("within", Dimension.LENGTH, "how near");

    private static Condition condition(String text) {
        return Condition.parse(text, RULE);
    }

    private static void assertThatOnlyTheSizeIsRead(Terms terms) {
        assertThat(terms.read(SIZE)).isTrue();
        assertThat(terms.read(OTHERS)).isFalse();
    }

    @Test
    void theConditionOfASelectionReadsItsAttributes() {
        assertThatOnlyTheSizeIsRead(Terms.none().with(FROM, new Selection(Role.PIPE, condition("diameter_in > 4"))));
    }

    @Test
    void aConditionReadsItsAttributesInWhateverUnit() {
        assertThatOnlyTheSizeIsRead(Terms.none().with(HOLDS, condition("diameter_mm > 100")));
        assertThat(condition("diameter_mm > 100").isAlways()).isFalse();
    }

    @Test
    void theAttributesThatMustBeStatedAreRead() {
        assertThatOnlyTheSizeIsRead(Terms.none().with(SAYS, new AttributeList(List.of(Attribute.DIAMETER))));
    }

    @Test
    void whatALimitDependsOnIsRead() {
        Limit limit = new Limit(Bound.AT_LEAST, Written.parse("5 ft", Dimension.LENGTH));

        assertThatOnlyTheSizeIsRead(Terms.none()
                .with(
                        AT_LEAST,
                        new Limits(List.of(new Limits.Case(condition("diameter_in > 4"), Optional.of(limit), RULE)))));
    }

    @Test
    void aQuantityReadsNone() {
        Terms terms = Terms.none()
                .with(WITHIN, Written.parse("5 ft", Dimension.LENGTH).quantity());

        assertThat(terms.read(SIZE)).isFalse();
        assertThat(terms.read(OTHERS)).isFalse();
    }

    @Test
    void whatEveryRuleGivesMustBeThere() {
        assertThat(Terms.none().find(WITHIN)).isEmpty();
        assertThatThrownBy(() -> Terms.none().get(WITHIN)).hasMessageContaining("within");
    }
}
