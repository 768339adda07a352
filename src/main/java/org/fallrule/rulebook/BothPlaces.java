package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fallrule.hydrology.HarderStorm;
import org.fallrule.locality.Climate;
import org.fallrule.locality.ExpectedCover;
import org.fallrule.locality.ExpectedCover.Band;
import org.fallrule.locality.Locality;
import org.fallrule.locality.MarkAccuracy;
import org.fallrule.locality.Runoff;
import org.fallrule.locality.RunoffCoefficient;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Length;
import org.fallrule.measure.Written;

/** What two counties say of the place of a lot that lies in both: of each the worse for the plan; nothing where neither is. */
final class BothPlaces {
    private final List<String> open = new ArrayList<>();

    /** What neither county's word was taken on, because neither is the worse. */
    List<String> open() {
        return List.copyOf(open);
    }

    Locality of(Locality one, Locality other) {
        return new Locality(
                climate(one.climate(), other.climate()),
                storm(one.storm(), other.storm()),
                runoff(one.runoff(), other.runoff()),
                marks(one.markAccuracy(), other.markAccuracy()),
                cover(one.expectedCover(), other.expectedCover()),
                one.laying());
    }

    private Climate climate(Climate one, Climate other) {
        Optional<Boolean> freezing = one.freezing()
                .map(freezes -> freezes || other.freezing().orElse(false))
                .or(other::freezing);
        Optional<String> soil = one.soil().or(other::soil);
        if (!soil.equals(other.soil().or(one::soil))) {
            open.add("climate: soil");
            soil = Optional.empty();
        }
        return new Climate(freezing, greater(one.frostDepth(), other.frostDepth()), soil);
    }

    private Storm storm(Storm one, Storm other) {
        Optional<Storm> harder = HarderStorm.of(one, other);
        if (harder.isEmpty()) {
            open.add("storm");
        }
        return harder.orElse(Storm.UNSAID);
    }

    private Runoff runoff(Runoff one, Runoff other) {
        SortedMap<String, RunoffCoefficient> all = new TreeMap<>(one.surfaces());
        other.surfaces().forEach((surface, mine) -> {
            RunoffCoefficient theirs = all.putIfAbsent(surface, mine);
            if (theirs == null || theirs.equals(mine)) {
                return;
            }
            if (isPlain(mine) && isPlain(theirs)) {
                all.put(surface, value(mine) > value(theirs) ? mine : theirs);
            } else {
                all.remove(surface);
                open.add("runoff: " + surface);
            }
        });
        return new Runoff(all);
    }

    private static boolean isPlain(RunoffCoefficient coefficient) {
        return coefficient.cases().size() == 1
                && coefficient.cases().get(0).when().isEmpty();
    }

    private static double value(RunoffCoefficient coefficient) {
        return coefficient.cases().get(0).is().value().si();
    }

    /** A mark counts as known as badly as the one of both says that takes it as worse; no figure is the worst. */
    private static MarkAccuracy marks(MarkAccuracy one, MarkAccuracy other) {
        Map<String, MarkAccuracy.Known> all = new LinkedHashMap<>(one.byQuality());
        other.byQuality()
                .forEach((quality, mine) -> all.merge(
                        quality,
                        mine,
                        (theirs, same) -> new MarkAccuracy.Known(
                                worse(theirs.horizontal(), mine.horizontal()),
                                worse(theirs.vertical(), mine.vertical()),
                                theirs.equals(mine) ? theirs.basis() : theirs.basis() + "; " + mine.basis(),
                                theirs.statedAt())));
        return new MarkAccuracy(all);
    }

    /** A utility may lie as high as the one and as deep as the other says. */
    private static ExpectedCover cover(ExpectedCover one, ExpectedCover other) {
        Map<String, ExpectedCover.Kind> all = new LinkedHashMap<>(one.byKind());
        other.byKind().forEach((kind, mine) -> all.merge(kind, mine, (theirs, same) -> wider(theirs, mine)));
        return new ExpectedCover(all);
    }

    private static ExpectedCover.Kind wider(ExpectedCover.Kind one, ExpectedCover.Kind other) {
        if (one.equals(other)) {
            return one;
        }
        Map<String, Band> under = new LinkedHashMap<>(one.under());
        other.under().forEach(under::putIfAbsent);
        under.replaceAll((surface, band) -> wider(one.under(Optional.of(surface)), other.under(Optional.of(surface))));
        return new ExpectedCover.Kind(
                wider(one.usual(), other.usual()), under, one.basis() + "; " + other.basis(), one.statedAt());
    }

    private static Band wider(Band one, Band other) {
        return new Band(
                new Length(Math.min(one.from().metres(), other.from().metres())),
                new Length(Math.max(one.to().metres(), other.to().metres())));
    }

    private static Optional<Written> greater(Optional<Written> one, Optional<Written> other) {
        return Stream.of(one, other)
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(each -> each.quantity().si()));
    }

    private static Optional<Written> worse(Optional<Written> one, Optional<Written> other) {
        return one.isEmpty() || other.isEmpty() ? Optional.empty() : greater(one, other);
    }
}
