package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.site.Role;

/** Asks what no file of a plan tells: the coordinate system, the datum, how good the survey is, what the lot has none of. */
final class WholePlan {
    /** What a lot may have none of, so that silence about it is not absence. */
    private static final List<Role> MAYBE_ABSENT = List.of(
            Role.WALK, Role.DRIVE, Role.SEPTIC, Role.WELL, Role.EASEMENT, Role.TREE, Role.WATER_BODY, Role.FLOOD_ZONE);

    private final Ledger ledger;
    private final LooseLayers loose;

    WholePlan(Ledger ledger, LooseLayers loose) {
        this.ledger = ledger;
        this.loose = loose;
    }

    /** The system of the files that do not name theirs; nothing where all do. */
    Optional<Statement> crs() {
        List<String> silent = new ArrayList<>();
        loose.tables().stream()
                .filter(table ->
                        !table.hasSystem() && Drawn.as(table.raw().features()).isPresent())
                .forEach(table -> silent.add(table.source()));
        loose.rasters().stream().filter(raster -> !raster.hasSystem()).forEach(raster -> silent.add(raster.file()));
        if (silent.isEmpty()) {
            return Optional.empty();
        }
        List<String> others = loose.tables().stream()
                .flatMap(table -> table.raw().crs().stream())
                .filter(name -> name.startsWith("EPSG:"))
                .distinct()
                .toList();
        String asks = "the coordinate system of " + silent.stream().limit(4).collect(Collectors.joining(", "))
                + (silent.size() > 4 ? ", …" : "")
                + "; a number such as EPSG:2264, from whoever made the file";
        return Optional.of(said(new Question("crs", asks, others, WholePlan::system), "crs"));
    }

    private static Optional<String> system(String typed) {
        try {
            String name = typed.matches("\\d+") ? "EPSG:" + typed : typed;
            CoordinateSystem.of(name, Place.of("crs"));
            return Optional.of(name);
        } catch (UnusableInput e) {
            return Optional.empty();
        }
    }

    Statement datum() {
        String asks = "the vertical datum of the elevations, such as NAVD88";
        Function<String, Optional<String>> any = typed -> Optional.of(typed).filter(text -> !text.isBlank());
        return said(new Question("datum", asks, List.of("NAVD88", "NGVD29"), any), "datum");
    }

    List<Statement> survey() {
        return List.of(
                said(
                        accuracy("horizontal", "how near in plan to the truth the survey is, such as 0.1 ft"),
                        "horizontal_accuracy"),
                said(
                        accuracy("vertical", "how near in height to the truth the survey is, such as 0.05 ft"),
                        "vertical_accuracy"));
    }

    private static Question accuracy(String way, String asks) {
        return new Question("survey." + way, asks, List.of(), WholePlan::length);
    }

    private static Optional<String> length(String typed) {
        try {
            return Written.parse(typed, Dimension.LENGTH).quantity().si() >= 0 ? Optional.of(typed) : Optional.empty();
        } catch (UnreadableQuantity e) {
            return Optional.empty();
        }
    }

    /** @param given the roles that there is a layer of */
    Statement absent(Set<Role> given) {
        List<String> silent = MAYBE_ABSENT.stream()
                .filter(role -> !given.contains(role))
                .map(Role::word)
                .toList();
        if (silent.isEmpty()) {
            return Statement.none("absent", "");
        }
        String asks =
                "which of these are not there at all: " + String.join(", ", silent) + "? As in [" + silent.get(0) + "]";
        return said(new Question("absent", asks, List.of(), typed -> roles(typed, silent)), "absent");
    }

    private static Optional<String> roles(String typed, List<String> silent) {
        List<String> named = Arrays.stream(typed.replaceAll("[\\[\\]]", "").split("[,\\s]+", -1))
                .filter(word -> !word.isBlank())
                .toList();
        return !named.isEmpty() && silent.containsAll(named) ? Optional.of(String.join(", ", named)) : Optional.empty();
    }

    private Statement said(Question question, String key) {
        return ledger.ask(question)
                .map(answer -> Statement.certain(key, answer))
                .orElseGet(() -> Statement.open(key, question.says()));
    }
}
