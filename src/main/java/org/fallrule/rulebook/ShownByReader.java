package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.check.Condition;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Reads how a plan shows an item of a checklist. Nothing where there was a fault, which is then gathered. */
final class ShownByReader {
    private static final String WANTED = "wanted by_hand, or keys: role, site, report, all_of or any_of";

    private final List<Fault> faults;

    ShownByReader(List<Fault> faults) {
        this.faults = faults;
    }

    Optional<ShownBy> read(Node node) {
        if (node instanceof Node.Scalar scalar && scalar.text().equals("by_hand")) {
            return Optional.of(new ShownBy.ByHand());
        }
        if (node instanceof Node.Mapping mapping) {
            Keys keys = new Keys(mapping, faults);
            Optional<ShownBy> read = read(keys, node);
            keys.refuseOthers("shown_by");
            return read;
        }
        faults.add(new Fault(node.place(), "shown_by: found " + node.kind() + ", " + WANTED));
        return Optional.empty();
    }

    private Optional<ShownBy> read(Keys keys, Node node) {
        List<Node> all = keys.list("all_of");
        List<Node> any = keys.list("any_of");
        Optional<Node.Scalar> role = keys.scalar("role");
        Optional<Node.Scalar> site = keys.scalar("site");
        Optional<Node.Scalar> report = keys.scalar("report");
        int given = (all.isEmpty() ? 0 : 1)
                + (any.isEmpty() ? 0 : 1)
                + (int) List.of(role, site, report).stream()
                        .filter(Optional::isPresent)
                        .count();
        if (given != 1) {
            faults.add(new Fault(node.place(), "shown_by: found " + given + " ways, " + WANTED + ", one of them"));
            return Optional.empty();
        }
        if (role.isPresent()) {
            return features(keys, role.get());
        }
        if (site.isPresent()) {
            return named(site.get(), ShownBy.SiteFact::named, words(ShownBy.SiteFact.values(), ShownBy.SiteFact::word))
                    .map(ShownBy.Stated::new);
        }
        if (report.isPresent()) {
            return named(report.get(), ShownBy.Part::named, words(ShownBy.Part.values(), ShownBy.Part::word))
                    .map(ShownBy.Reported::new);
        }
        List<ShownBy> parts = (all.isEmpty() ? any : all)
                .stream().flatMap(part -> read(part).stream()).toList();
        return Optional.of(all.isEmpty() ? new ShownBy.AnyOf(parts) : new ShownBy.AllOf(parts));
    }

    private Optional<ShownBy> features(Keys keys, Node.Scalar word) {
        Optional<Role> role = named(word, Role::named, Role.words());
        Optional<Condition> where = keys.scalar("where")
                .map(text -> new ValueReader(faults).condition(text))
                .orElse(Optional.of(Condition.ALWAYS));
        List<Attribute<?>> known = new ArrayList<>();
        for (Node.Scalar name : keys.scalars("known")) {
            Optional<Attribute<?>> attribute = named(
                    name,
                    Attribute::named,
                    Attribute.all().stream().map(Attribute::name).toList());
            attribute.ifPresent(known::add);
        }
        return role.flatMap(of -> where.map(condition -> new ShownBy.Features(of, condition, known)));
    }

    private static <T> List<String> words(T[] values, Function<T, String> word) {
        return Arrays.stream(values).map(word).toList();
    }

    private <T> Optional<T> named(Node.Scalar word, Function<String, Optional<T>> named, List<String> all) {
        Optional<T> found = named.apply(word.text());
        if (found.isEmpty()) {
            faults.add(new Fault(
                    word.place(),
                    "found " + word.kind() + ", wanted one of " + String.join(", ", all)
                            + Nearest.hint(word.text(), all)));
        }
        return found;
    }
}
