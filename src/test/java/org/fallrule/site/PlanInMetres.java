package org.fallrule.site;

/** A plan as it is when its heights are in metres, for tests. */
public final class PlanInMetres {
    private PlanInMetres() {}

    public static Site of(Site site) {
        return new Site(
                site.id(),
                site.name(),
                site.county(),
                site.house(),
                site.crs(),
                site.datum(),
                site.frame(),
                site.survey(),
                site.layers(),
                site.waivers(),
                site.problems(),
                site.storm(),
                true);
    }
}
