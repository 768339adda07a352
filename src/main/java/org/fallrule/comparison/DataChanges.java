package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fallrule.measure.Length;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.site.Survey;
import org.fallrule.site.Waiver;

/** What two states of a site say differently. */
final class DataChanges {
    private final Site before;
    private final Site after;
    private final List<DataChange> changes = new ArrayList<>();

    private DataChanges(Site before, Site after) {
        this.before = before;
        this.after = after;
    }

    /** @param asBuilt whether the later state is work as built: that its status has become so is no news */
    static List<DataChange> of(Site before, Site after, FeaturePairs features, boolean asBuilt) {
        DataChanges all = new DataChanges(before, after);
        all.site();
        all.layers();
        features.added().forEach(each -> all.changes.add(DataChange.of(DataChange.Kind.ADDED, each)));
        features.removed().forEach(each -> all.changes.add(DataChange.of(DataChange.Kind.REMOVED, each)));
        features.pairs().forEach(pair -> all.changes.addAll(new FeatureChanges(pair, asBuilt, after).changes()));
        return all.changes.stream()
                .sorted(Comparator.comparing(DataChange::kind))
                .toList();
    }

    private void site() {
        said("the site", "county", Site::county);
        said("the site", "house", Site::house);
        said("the site", "coordinate system", site -> Optional.of(site.crs()).filter(crs -> !crs.isEmpty()));
        said("the site", "datum", Site::datum);
        said("the survey", "day", site -> site.survey().date().map(Object::toString));
        said("the survey", "source", site -> site.survey().source());
        said("the survey", "horizontal accuracy", site -> accuracy(site, Survey::horizontalAccuracy));
        said("the survey", "vertical accuracy", site -> accuracy(site, Survey::verticalAccuracy));
        Stream.of(before, after)
                .flatMap(site -> site.waivers().stream())
                .map(DataChanges::excused)
                .distinct()
                .sorted()
                .forEach(excused -> said("the waivers", excused, site -> granted(site, excused)));
    }

    private static Optional<String> accuracy(Site site, Function<Survey, Optional<Length>> of) {
        return of.apply(site.survey()).map(length -> site.printed(length.metres()));
    }

    /** {@code outfall-walk-setback for OF-1}. */
    private static String excused(Waiver waiver) {
        return waiver.rule() + " for " + waiver.feature().orElse("every feature");
    }

    /** {@code by county engineer on 2026-01-02 until 2026-09-01 (rock)}; what is granted twice is told twice. */
    private static Optional<String> granted(Site site, String excused) {
        return site.waivers().stream()
                .filter(waiver -> excused(waiver).equals(excused))
                .map(waiver -> "by " + waiver.by() + " on " + waiver.date()
                        + waiver.until().map(last -> " until " + last).orElse("") + " (" + waiver.reason() + ")")
                .reduce((one, other) -> one + " and " + other);
    }

    private void said(String about, String what, Function<Site, Optional<String>> value) {
        Optional<String> from = value.apply(before);
        Optional<String> to = value.apply(after);
        if (!from.equals(to)) {
            changes.add(DataChange.said(DataChange.Kind.SITE, about, Optional.empty(), what, from, to));
        }
    }

    private void layers() {
        Set<Role> roles = new LinkedHashSet<>(before.layers().keySet());
        roles.addAll(after.layers().keySet());
        roles.stream().sorted().forEach(role -> {
            String from = state(before.layer(role));
            String to = state(after.layer(role));
            if (!from.equals(to)) {
                changes.add(DataChange.said(
                        DataChange.Kind.LAYER,
                        "the " + role.spoken() + " layer",
                        Optional.empty(),
                        "",
                        Optional.of(from),
                        Optional.of(to)));
            }
        });
    }

    private static String state(Layer layer) {
        if (layer instanceof Layer.Raster raster) {
            return "supplied as the raster " + raster.file();
        }
        if (layer instanceof Layer.StatedAbsent) {
            return "stated absent";
        }
        return layer instanceof Layer.Supplied ? "supplied" : "not supplied";
    }
}
