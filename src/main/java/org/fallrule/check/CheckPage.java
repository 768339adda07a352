package org.fallrule.check;

import java.util.List;

/**
 * What a check's page says beyond its parameters.
 *
 * @param measures what is measured, and how
 * @param formula the formula or the geometric definition
 * @param source where the definition comes from
 * @param blindTo what it cannot see
 */
public record CheckPage(String measures, String formula, String source, List<String> blindTo) {

    public CheckPage {
        blindTo = List.copyOf(blindTo);
    }
}
