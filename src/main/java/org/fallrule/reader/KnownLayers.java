package org.fallrule.reader;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** What a profile of layers settles beforehand, so that nobody has to be asked about it. */
public final class KnownLayers {
    private final LayerProfile profile;
    private final List<Fault> questions;

    private KnownLayers(LayerProfile profile, List<Fault> questions) {
        this.profile = profile;
        this.questions = List.copyOf(questions);
    }

    /** Nothing is settled. */
    public static KnownLayers none() {
        return new KnownLayers(LayerProfile.NONE, List.of());
    }

    /**
     * What a profile settles.
     *
     * @param folder the site folder
     * @param name the profile's path from there
     * @throws UnusableInput with every fault of the profile
     */
    public static KnownLayers of(Path folder, String name) {
        List<Fault> faults = new ArrayList<>();
        Node.Scalar named = new Node.Scalar(Place.of(name), name, false);
        LayerProfile profile = ProfileFile.read(folder, Optional.of(named), faults);
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new KnownLayers(
                profile, OpenQuestions.in(Yaml.text(ProfileFile.path(folder, name, named.place()), name), name));
    }

    /** What the profile asks and nobody has answered, each with its line there. */
    public List<Fault> questions() {
        return questions;
    }

    /** What it says of a file, or of a table in it, by name, taking it for a role. */
    List<LayerProfile.Entry> of(String file, Optional<String> table) {
        return profile.entries().stream()
                .filter(entry -> entry.files().isPresent() && entry.speaksOf(file))
                .filter(entry -> entry.spec()
                        .table()
                        .map(named ->
                                table.filter(named.text()::equalsIgnoreCase).isPresent())
                        .orElse(true))
                .toList();
    }

    /** The attributes of a role whose columns it names. */
    public Set<Attribute<?>> columns(Role role) {
        Set<Attribute<?>> named = new LinkedHashSet<>();
        profile.entries().stream().filter(entry -> entry.role() == role).forEach(entry -> {
            named.addAll(fields(entry, false));
            named.addAll(entry.spec().all().keySet());
        });
        return named;
    }

    /** The attributes of a role whose columns it leaves open, so that a site has to name them. */
    public Set<Attribute<?>> openColumns(Role role) {
        Set<Attribute<?>> open = new LinkedHashSet<>();
        profile.entries().stream()
                .filter(entry -> entry.role() == role)
                .forEach(entry -> open.addAll(fields(entry, true)));
        return open;
    }

    private static List<Attribute<?>> fields(LayerProfile.Entry entry, boolean open) {
        List<Attribute<?>> fields = new ArrayList<>();
        entry.spec().fields().forEach((attribute, column) -> {
            if (column.blank() == open) {
                fields.add(attribute);
            }
        });
        return fields;
    }

    /** The quantities, by name, whose units it says for a role. */
    public Set<String> units(Role role) {
        Set<String> said = new TreeSet<>(profile.units().keySet());
        profile.entries().stream()
                .filter(entry -> entry.role() == role)
                .forEach(entry -> said.addAll(entry.spec().units().keySet()));
        return said;
    }
}
