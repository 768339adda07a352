package org.fallrule.reference;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fallrule.check.Need;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** The tables of what data each check wants and what each layer is for, in Markdown. */
public final class DataReference {
    private final Map<String, Set<Need>> needs = new TreeMap<>();
    private final Map<String, Set<String>> attributes;

    private DataReference(Collection<RuleBook> books, List<Site> plans, RuleBook tried) {
        for (RuleBook book : books) {
            for (Rule rule : book.rules()) {
                needs.computeIfAbsent(rule.check().name(), any -> new LinkedHashSet<>())
                        .addAll(rule.check().needs(rule.terms()));
            }
        }
        attributes = AttributeTrial.of(plans, tried);
    }

    /**
     * The tables.
     *
     * @param books the books whose rules are looked at
     * @param plans plans, as full as can be, that attributes are taken away from to see what can no longer be told
     * @param tried the book that these are reviewed by
     */
    public static String tables(Collection<RuleBook> books, List<Site> plans, RuleBook tried) {
        DataReference reference = new DataReference(books, plans, tried);
        return reference.byCheck() + "\n" + reference.byRole();
    }

    private String byCheck() {
        StringBuilder text = new StringBuilder("""
                ### From a check to its data

                | check | layers, one or more of which each rule needs | and | cannot tell without |
                | --- | --- | --- | --- |
                """);
        needs.forEach((check, wanted) -> text.append("| [")
                .append(check)
                .append("](checks/")
                .append(check)
                .append(".md) | ")
                .append(roles(wanted).stream().map(Role::word).collect(Collectors.joining(", ")))
                .append(" | ")
                .append(others(wanted))
                .append(" | ")
                .append(String.join(", ", attributes.getOrDefault(check, Set.of())))
                .append(" |\n"));
        return text.toString();
    }

    private static Set<Role> roles(Set<Need> needs) {
        return needs.stream()
                .filter(Need.OfLayer.class::isInstance)
                .map(need -> ((Need.OfLayer) need).role())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String others(Set<Need> needs) {
        Set<String> words = new TreeSet<>();
        for (Need need : needs) {
            if (need instanceof Need.OfGround) {
                words.add("ground");
            } else if (need instanceof Need.OfStorm) {
                words.add("design storm");
            } else if (need instanceof Need.OfOwnLot) {
                words.add("which lot is own");
            }
        }
        return String.join(", ", words);
    }

    private String byRole() {
        StringBuilder text = new StringBuilder("""
                ### From a layer to its checks

                | layer | is | drawn as | may carry | needed by |
                | --- | --- | --- | --- | --- |
                """);
        for (Role role : Role.values()) {
            text.append("| ")
                    .append(role.word())
                    .append(" | ")
                    .append(role.meaning())
                    .append(" | ")
                    .append(role.form().spoken())
                    .append(" | ")
                    .append(carried(role))
                    .append(" | ")
                    .append(neededBy(role))
                    .append(" |\n");
        }
        return text.toString();
    }

    private static String carried(Role role) {
        return Attribute.of(role).stream()
                .filter(attribute -> attribute != Attribute.ID
                        && attribute != Attribute.HORIZONTAL_ACCURACY
                        && attribute != Attribute.VERTICAL_ACCURACY)
                .map(Attribute::name)
                .collect(Collectors.joining(", "));
    }

    private String neededBy(Role role) {
        return needs.entrySet().stream()
                .filter(entry -> roles(entry.getValue()).contains(role))
                .map(Map.Entry::getKey)
                .collect(Collectors.joining(", "));
    }
}
