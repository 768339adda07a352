package org.fallrule.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.site.Role;

/** Writes a draft as site.yaml, with a comment for everything that is not plain. */
final class DraftText {
    private static final int WIDTH = 78;

    private final Draft draft;
    private final StringBuilder text = new StringBuilder();

    private DraftText(Draft draft) {
        this.draft = draft;
    }

    static String write(Draft draft) {
        return new DraftText(draft).written();
    }

    private String written() {
        comment(
                0,
                "Drafted from the files in this folder. Look it through: \"likely\" was guessed. A line with \"ask:\" is open:"
                        + " put the answer behind the key, or take the line away where it says so. What stays open"
                        + " is told by every check, and what hangs on it is not passed.");
        text.append("site: ").append(SiteYaml.text(draft.site())).append('\n');
        comment(0, "county: is found from where the lot lies; name one to override it");
        draft.profile()
                .ifPresent(name ->
                        text.append("layers_from: ").append(SiteYaml.text(name)).append('\n'));
        draft.crs().ifPresent(crs -> SiteYaml.line(text, 0, crs));
        SiteYaml.line(text, 0, draft.datum());
        if (!draft.units().isEmpty()) {
            comment(0, "the units of numbers that carry none");
        }
        SiteYaml.lines(text, 0, "units", draft.units());
        SiteYaml.lines(text, 0, "survey", draft.survey());
        absent();
        draft.told().forEach(said -> comment(0, said));
        draft.open().forEach(this::open);
        layers();
        return text.toString();
    }

    private void absent() {
        Statement absent = draft.absent();
        if (absent.isOpen()) {
            SiteYaml.line(text, 0, absent);
        } else if (!absent.value().isEmpty()) {
            text.append("absent: [").append(absent.value()).append("]\n");
        }
    }

    private void open(Draft.OpenQuestion question) {
        text.append(SiteYaml.question(question.question())).append('\n');
        question.offered()
                .forEach(line ->
                        text.append("#   ").append(SiteYaml.oneLine(line)).append('\n'));
    }

    private void layers() {
        if (draft.layers().isEmpty()) {
            comment(0, "no file here was taken for a layer");
            return;
        }
        text.append("layers:\n");
        Map<Role, List<DraftLayer>> byRole = new LinkedHashMap<>();
        draft.layers()
                .forEach(layer -> byRole.computeIfAbsent(layer.role(), any -> new ArrayList<>())
                        .add(layer));
        byRole.forEach((role, layers) -> {
            if (layers.size() == 1) {
                one(layers.get(0));
            } else {
                text.append("  ").append(role.word()).append(":\n");
                layers.forEach(this::item);
            }
        });
    }

    private void one(DraftLayer layer) {
        String because = "  # " + because(layer);
        text.append("  ").append(layer.role().word()).append(':');
        if (layer.isFileAlone()) {
            text.append(' ').append(SiteYaml.text(layer.file())).append(because).append('\n');
        } else {
            text.append(because).append('\n');
            body(4, "    ", layer);
        }
    }

    private void item(DraftLayer layer) {
        comment(4, because(layer));
        body(6, "    - ", layer);
    }

    private static String because(DraftLayer layer) {
        return SiteYaml.oneLine(layer.sureness().spoken() + ": " + layer.because() + ", " + layer.counted());
    }

    private void body(int indent, String first, DraftLayer layer) {
        text.append(first).append("file: ").append(SiteYaml.text(layer.file())).append('\n');
        layer.table().ifPresent(table -> SiteYaml.line(text, indent, Statement.certain("table", table)));
        if (!layer.where().isEmpty()) {
            SiteYaml.line(text, indent, Statement.certain("where", layer.where()));
        }
        SiteYaml.lines(text, indent, "fields", layer.fields());
        SiteYaml.lines(text, indent, "units", layer.units());
        SiteYaml.lines(text, indent, "values", layer.values());
        SiteYaml.lines(text, indent, "all", layer.all());
    }

    /** A comment broken into lines between its words. */
    private void comment(int indent, String words) {
        String start = " ".repeat(indent) + "#";
        StringBuilder line = new StringBuilder(start);
        for (String word : SiteYaml.oneLine(words).split(" ", -1)) {
            if (line.length() > start.length() && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(start);
            }
            line.append(' ').append(word);
        }
        text.append(line).append('\n');
    }
}
