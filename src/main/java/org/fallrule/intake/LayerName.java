package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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

    /** What it stands for however it is drawn; nothing where that is open. */
    Optional<Meaning> onlyMeaning() {
        Set<Meaning> all = new LinkedHashSet<>();
        for (Role.Form form : Role.Form.values()) {
            all.addAll(meanings(form));
        }
        return all.size() == 1 ? all.stream().findFirst() : Optional.empty();
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
        Set<Role> ofOneWord = EnumSet.noneOf(Role.class);
        for (String word : parts()) {
            List<Meaning> known = words.layer(word);
            for (Meaning meaning : known) {
                meaning.role().filter(role -> fits(role, form, known)).ifPresent(role -> {
                    kinds.computeIfAbsent(role, any -> new LinkedHashSet<>())
                            .addAll(meaning.kind().stream().toList());
                    if (known.stream().filter(other -> other.is(role)).count() > 1) {
                        ofOneWord.add(role);
                    }
                });
            }
        }
        return kinds.entrySet().stream()
                .flatMap(entry -> meanings(entry.getKey(), entry.getValue(), ofOneWord.contains(entry.getKey())))
                .toList();
    }

    /** A lot may be drawn as lines around it, where the word means no other layer. */
    private static boolean fits(Role role, Role.Form form, List<Meaning> known) {
        long roles =
                known.stream().filter(meaning -> meaning.role().isPresent()).count();
        return roles == 1 ? Drawn.canBe(role, form) : Drawn.fits(role, form);
    }

    /** The same, and where its words may stand for no layer at all, that too. */
    List<Meaning> meaningsOrNone(Role.Form form) {
        List<Meaning> all = new ArrayList<>(meanings(form));
        if (!all.isEmpty()) {
            parts().stream()
                    .flatMap(word -> words.layer(word).stream())
                    .filter(meaning -> meaning.role().isEmpty() && !all.contains(meaning))
                    .forEach(all::add);
        }
        return all;
    }

    /** Of the kinds that several words say none is taken; one word that has several has several meanings. */
    private static Stream<Meaning> meanings(Role role, Set<String> kinds, boolean areOfOneWord) {
        boolean isOne = kinds.size() == 1 || (areOfOneWord && !kinds.isEmpty());
        return isOne
                ? kinds.stream().map(kind -> Meaning.of(role.word() + " " + kind))
                : Stream.of(Meaning.of(role.word()));
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
