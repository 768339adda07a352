package org.fallrule.check;

import java.util.List;
import org.fallrule.site.Attribute;

/**
 * Attributes that a rule book names.
 *
 * @param all in the order written, each once
 */
public record AttributeList(List<Attribute<?>> all) {

    public AttributeList {
        all = all.stream().<Attribute<?>>map(each -> each).distinct().toList();
    }
}
