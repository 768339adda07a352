package org.fallrule.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.KnownLayers;
import org.fallrule.reader.LooseLayers;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.jspecify.annotations.Nullable;

/** Looks over a folder of loose files and drafts its site.yaml. What the files do not tell is asked, never guessed. */
public final class Intake {
    private final TradeWords words = TradeWords.load();
    private final Ledger ledger;
    private final UnitNeeds needs = new UnitNeeds();
    private final KnownLayers known;
    private final LooseLayers loose;

    private Intake(LooseLayers loose, KnownLayers known, Asker asker) {
        this.loose = loose;
        this.known = known;
        this.ledger = new Ledger(asker);
    }

    /**
     * A draft for a folder.
     *
     * @param profile the path of a profile of layers, from the folder
     * @throws UnusableInput when the folder cannot be listed or the profile cannot be used
     */
    public static Draft draft(Path folder, Optional<String> profile, Asker asker) {
        KnownLayers known = profile.map(name -> KnownLayers.of(folder, name)).orElseGet(KnownLayers::none);
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return new Intake(LooseLayers.in(folder, known), known, asker)
                .drafted(name == null ? "site" : name.toString(), profile);
    }

    private Draft drafted(String site, Optional<String> profile) {
        List<DraftLayer> layers = layers();
        WholePlan plan = new WholePlan(ledger, loose);
        Optional<Statement> crs = plan.crs();
        List<Statement> units = needs.settled(ledger);
        Set<Role> given = new LinkedHashSet<>();
        layers.forEach(layer -> given.add(layer.role()));
        Statement datum = plan.datum();
        List<Statement> survey = plan.survey();
        Statement absent = plan.absent(given);
        return new Draft(
                site,
                profile,
                known.questions(),
                crs,
                datum,
                units,
                survey,
                absent,
                layers,
                ledger.open().stream()
                        .map(open -> new Draft.OpenQuestion(open.question(), open.offered()))
                        .toList(),
                ledger.told(),
                loose.unreadable(),
                ledger.asked(),
                ledger.answered());
    }

    private List<DraftLayer> layers() {
        Map<Role, List<Placement>> placed = new EnumMap<>(Role.class);
        List<DraftLayer> layers = new ArrayList<>();
        TablePlacer placer = new TablePlacer(words, ledger);
        UnreadColumns unread = new UnreadColumns();
        for (LooseLayers.Table table : loose.tables()) {
            tellPeople(table);
            tellSampled(table);
            table.placedAs()
                    .forEach(role -> layers.add(DraftLayer.plain(
                            role,
                            table.file(),
                            table.table(),
                            Drawn.counted(table, table.placedAs(role)),
                            Sureness.CERTAIN,
                            "as the profile says")));
            if (table.placedAs().isEmpty() || !table.unplaced().isEmpty()) {
                placer.place(table, table.unplaced())
                        .forEach(each -> placed.computeIfAbsent(each.role(), any -> new ArrayList<>())
                                .add(each));
            }
        }
        layers.forEach(layer -> tellOthers(layer, placed.remove(layer.role())));
        placed.forEach((role, several) -> new OneSource(ledger, role)
                .of(several)
                .forEach(each -> {
                    LayerDrafter drafter = new LayerDrafter(words, ledger, known, needs, each);
                    DraftLayer layer = drafter.draft();
                    layers.add(layer);
                    unread.taken(each.table(), drafter.read(), named(layer));
                }));
        unread.tell(ledger);
        grounds(layers);
        layers.sort(Comparator.comparing(DraftLayer::role));
        return layers;
    }

    /** Where the layer names columns besides those that it reads. */
    private static String named(DraftLayer layer) {
        return layer.fields().stream()
                .filter(Statement::isOpen)
                .map(Statement::remark)
                .collect(Collectors.joining(" ", layer.where() + " ", ""));
    }

    private void tellOthers(DraftLayer taken, @Nullable List<Placement> others) {
        if (others != null) {
            others.forEach(
                    other -> ledger.tell(other.table().source() + ", " + Drawn.counted(other.table(), other.features())
                            + " taken for " + taken.role().spoken() + " " + other.because()
                            + ", is left out: the profile takes "
                            + taken.source()));
        }
    }

    private void tellPeople(LooseLayers.Table table) {
        long columns = table.raw().columns().stream().filter(Cells::isOfPeople).count();
        if (columns > 0) {
            ledger.tell(table.source() + ": "
                    + (columns == 1
                            ? "a column that may name people was"
                            : columns + " columns that may name people were")
                    + " not looked into");
        }
    }

    private void tellSampled(LooseLayers.Table table) {
        if (table.isSampled()) {
            ledger.tell(String.format(
                    Locale.ROOT,
                    "%s: of its %,d features %,d were looked at closely, the first and each that has a value or a way of"
                            + " writing that those before it had not",
                    table.source(),
                    table.count(),
                    table.raw().features().size()));
        }
    }

    private void grounds(List<DraftLayer> layers) {
        List<LooseLayers.Raster> rasters = loose.rasters();
        if (rasters.size() > 1) {
            ledger.leaveOpen(
                    "which of these rasters is the ground as it is, and which as it will be? Name them below; then take"
                            + " this line away",
                    rasters.stream()
                            .map(raster -> Role.GROUND.word() + ": " + SiteYaml.text(raster.file()))
                            .toList());
            return;
        }
        for (LooseLayers.Raster raster : rasters) {
            layers.add(DraftLayer.plain(
                    Role.GROUND, raster.file(), Optional.empty(), "a raster", Sureness.LIKELY, "the only raster here"));
            if (raster.unit().isEmpty()) {
                needs.add(Attribute.ELEVATION.name(), "heights in " + raster.file());
            }
        }
    }
}
