package org.fallrule.reader;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/**
 * The vertical datum of a plan's heights. Heights that are said to be in another are not shifted and not used: between NGVD 29
 * and NAVD 88 alone lie some feet, which differ from place to place.
 */
final class PlanDatum {
    private Optional<VerticalDatum> datum;
    private String saidBy;
    private final List<Fault> problems;

    private PlanDatum(Optional<VerticalDatum> datum, String saidBy, List<Fault> problems) {
        this.datum = datum;
        this.saidBy = saidBy;
        this.problems = problems;
    }

    /**
     * What site.yaml says of the whole plan; else the datum of the first layer that has one, the drain before the ground and
     * rasters last.
     */
    static PlanDatum of(SiteFile file, List<OpenLayer> open, List<Fault> problems) {
        if (file.datum().isPresent()) {
            return new PlanDatum(file.datum().map(VerticalDatum::new), "datum in site.yaml", problems);
        }
        return open.stream()
                .sorted(Comparator.comparing(
                        (OpenLayer layer) -> !layer.spec().role().isOfDrain()))
                .filter(layer ->
                        said(layer.spec(), layer.system().heightDatum()).isPresent())
                .findFirst()
                .map(layer -> new PlanDatum(
                        said(layer.spec(), layer.system().heightDatum()),
                        layer.spec().source(),
                        problems))
                .orElseGet(() -> new PlanDatum(Optional.empty(), "", problems));
    }

    private static Optional<VerticalDatum> said(LayerSpec spec, Optional<String> byFile) {
        return byFile.or(() -> spec.datum().map(Node.Scalar::text)).map(VerticalDatum::new);
    }

    /**
     * Whether a layer's heights are known to be in another datum than the plan's; that is told.
     *
     * @param byFile the datum that the layer's own file names
     */
    boolean isForeign(LayerSpec spec, Optional<String> byFile) {
        tellContradiction(spec, byFile);
        Optional<VerticalDatum> found = said(spec, byFile);
        if (datum.isEmpty() && found.isPresent()) {
            datum = found;
            saidBy = spec.source();
        }
        if (found.isEmpty() || datum.isEmpty() || found.get().isSameAs(datum.get())) {
            return false;
        }
        String wanted = datum.get().name();
        problems.add(new Fault(
                Place.of(spec.source()),
                "its heights are in " + found.get().name() + ", the plan's in " + wanted + " (" + saidBy
                        + "); they are not shifted and not used: bring them to " + wanted
                        + " in a GIS program, or mend the"
                        + " datum that is wrong in site.yaml"));
        return true;
    }

    private void tellContradiction(LayerSpec spec, Optional<String> byFile) {
        Optional<VerticalDatum> stated = spec.datum().map(Node.Scalar::text).map(VerticalDatum::new);
        if (byFile.isPresent() && stated.isPresent() && !stated.get().isSameAs(new VerticalDatum(byFile.get()))) {
            problems.add(new Fault(
                    Place.of(spec.source()),
                    "its heights are in " + byFile.get() + " by its own words; "
                            + stated.get().name() + " in site.yaml was not used; mend the one that is wrong"));
        }
    }
}
