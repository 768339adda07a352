package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/** Lays the checklists of rule books over each other, item by item and key by key. */
final class ChecklistLayering {
    private final List<Fault> faults;
    private final Map<String, Node.Mapping> items = new LinkedHashMap<>();
    private final Map<String, Place> places = new LinkedHashMap<>();

    ChecklistLayering(List<Fault> faults) {
        this.faults = faults;
    }

    void lay(BookFile book) {
        book.checklist()
                .ifPresent(all -> all.entries().forEach((id, node) -> {
                    if (node instanceof Node.Mapping item) {
                        lay(book.layer(), id, item, all.placeOf(id));
                    } else {
                        faults.add(new Fault(
                                node.place(), "item " + id + ": found " + node.kind() + ", wanted keys with values"));
                    }
                }));
    }

    private void lay(BookFile.Layer layer, String id, Node.Mapping item, Place place) {
        boolean known = items.containsKey(id);
        if (known && layer == BookFile.Layer.HOUSE && !LayeredRule.saysWhyLoosened(item)) {
            faults.add(new Fault(
                    place,
                    "item " + id + " is the county's to ask for; a house book may add items, and changes one only with"
                            + " loosen_because: \"…\""));
        }
        if (item.get("drop").isPresent()) {
            drop(id, item, place);
            return;
        }
        if (!known && item.get("asks").isEmpty()) {
            faults.add(new Fault(
                    place,
                    "item " + id + " is in none of the books below" + Nearest.hint(id, items.keySet())
                            + " To mend it, give asks if the item is new"));
            return;
        }
        items.merge(id, item, Node.Mapping::overlaid);
        places.put(id, place);
    }

    private void drop(String id, Node.Mapping item, Place place) {
        Keys keys = new Keys(item, faults);
        keys.scalar("drop").filter(drop -> !drop.text().equals("true")).ifPresent(drop -> {
            faults.add(
                    new Fault(drop.place(), "found " + drop.kind() + ", wanted true; leave drop out to keep the item"));
        });
        keys.required("reason", "why the item is dropped");
        keys.text("loosen_because");
        keys.refuseOthers("a dropped item of a checklist");
        if (items.remove(id) == null) {
            faults.add(new Fault(
                    place, "item " + id + " is in none of the books below" + Nearest.hint(id, items.keySet())));
        }
    }

    /** The items that come out, in the order of the books. */
    List<ChecklistItem> items() {
        List<ChecklistItem> read = new ArrayList<>();
        items.forEach((id, item) -> read(id, item).ifPresent(read::add));
        return read;
    }

    private Optional<ChecklistItem> read(String id, Node.Mapping item) {
        Keys keys = new Keys(item, faults);
        Optional<String> asks = keys.required("asks", "what is asked for").map(Node.Scalar::text);
        ChecklistItem.Asked asked = keys.scalar("asked").flatMap(this::asked).orElse(ChecklistItem.Asked.USUALLY);
        Optional<ShownBy> shownBy =
                keys.node("shown_by").map(new ShownByReader(faults)::read).orElse(Optional.of(new ShownBy.ByHand()));
        keys.text("loosen_because");
        keys.refuseOthers("an item of a checklist");
        Place place = places.getOrDefault(id, item.place());
        return asks.flatMap(what -> shownBy.map(shown -> new ChecklistItem(id, what, asked, shown, place)));
    }

    private Optional<ChecklistItem.Asked> asked(Node.Scalar scalar) {
        Optional<ChecklistItem.Asked> asked = ChecklistItem.Asked.named(scalar.text());
        if (asked.isEmpty()) {
            List<String> words = Arrays.stream(ChecklistItem.Asked.values())
                    .map(ChecklistItem.Asked::word)
                    .toList();
            faults.add(new Fault(
                    scalar.place(), "asked: found " + scalar.kind() + ", wanted one of " + String.join(", ", words)));
        }
        return asked;
    }
}
