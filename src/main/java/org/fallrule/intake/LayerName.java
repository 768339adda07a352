package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fallrule.reader.LooseLayers;
import org.fallrule.site.Role;

/** What the name of a file, a table or a drawing layer says. */
final class LayerName {
    private final TradeWords words;
    private final String name;

    LayerName(TradeWords words, String name) {
        this.words = words;
        this.name = name;
    }

    /**
     * The table's own name, else that of the file without folder and ending; where that says nothing, that of the only table in it.
     */
    static LayerName of(TradeWords words, LooseLayers.Table table, Role.Form form) {
        if (table.table().isPresent()) {
            return new LayerName(words, table.table().get());
        }
        String base = table.file().substring(table.file().lastIndexOf('/') + 1);
        int dot = base.lastIndexOf('.');
        LayerName ofFile = new LayerName(words, dot > 0 ? base.substring(0, dot) : base);
        return table.only()
                .map(only -> new LayerName(words, only))
                .filter(ofTable -> !ofFile.says(form) && ofTable.says(form))
                .orElse(ofFile);
    }

    private boolean says(Role.Form form) {
        return Arrays.stream(Role.values()).anyMatch(role -> is(role) && Drawn.fits(role, form))
                || !meanings(form).isEmpty();
    }

    /** Whether it is a role's own word, in the singular or plural. */
    boolean is(Role role) {
        String plain = TradeWords.plain(name);
        String word = TradeWords.plain(role.word());
        return plain.equals(word) || plain.equals(word + "s");
    }

    /** What its words may stand for, one meaning for each role, where the form of the geometry fits. */
    List<Meaning> meanings(Role.Form form) {
        Map<Role, Set<String>> kinds = new LinkedHashMap<>();
        for (String word : parts()) {
            for (Meaning meaning : words.layer(word)) {
                meaning.role()
                        .filter(role -> Drawn.fits(role, form))
                        .ifPresent(role -> kinds.computeIfAbsent(role, any -> new LinkedHashSet<>())
                                .addAll(meaning.kind().stream().toList()));
            }
        }
        return kinds.entrySet().stream()
                .map(entry -> meaning(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** Of several kinds none is taken. */
    private static Meaning meaning(Role role, Set<String> kinds) {
        return Meaning.of(
                kinds.size() == 1 ? role.word() + " " + kinds.iterator().next() : role.word());
    }

    /** Its words, the whole and every two that follow each other too: {@code DRN_AREA} is drn, area and drnarea. */
    private List<String> parts() {
        String spaced = name.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ");
        List<String> single = List.of(spaced.split("[^\\p{L}]+", -1)).stream()
                .filter(part -> !part.isBlank())
                .toList();
        List<String> all = new ArrayList<>(single);
        for (int i = 1; i < single.size(); i++) {
            all.add(single.get(i - 1) + single.get(i));
        }
        all.add(name);
        return all;
    }
}
