package org.fallrule.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.WKBWriter;

/**
 * The questions of {@link PlanQuestions} put to PostGIS by {@code psql}, which finds its server by the usual variables of the
 * environment. The sites stand side by side in one plane, so far apart that none is another's neighbour.
 */
final class SpatialDatabase {
    /** Metres; a power of two, so that shifting a site loses next to nothing of its coordinates. */
    private static final double APART = 16_384;

    private static final List<Role> ROLES =
            List.of(Role.OUTFALL, Role.WALK, Role.LOT, Role.BUILDING, Role.PIPE, Role.UTILITY);

    private static final String SETBACK = """
            CREATE UNLOGGED TABLE setback AS
            SELECT o.site, o.id, 'walk' AS of, near.metres FROM outfall o CROSS JOIN LATERAL
              (SELECT ST_Distance(o.geom, w.geom) AS metres FROM walk w WHERE w.kind = 'public'
               ORDER BY o.geom <-> w.geom LIMIT 1) near
            UNION ALL SELECT o.site, o.id, 'lot', near.metres FROM outfall o CROSS JOIN LATERAL
              (SELECT ST_Distance(o.geom, ST_Boundary(l.geom)) * CASE WHEN ST_Intersects(l.geom, o.geom) THEN 1 ELSE -1 END
               AS metres FROM lot l WHERE l.kind = 'own' ORDER BY o.geom <-> l.geom LIMIT 1) near
            UNION ALL SELECT o.site, o.id, 'building', near.metres FROM outfall o CROSS JOIN LATERAL
              (SELECT ST_Distance(o.geom, b.geom) AS metres FROM building b ORDER BY o.geom <-> b.geom LIMIT 1) near;
            """;

    @SuppressWarnings("InlineFormatString") // too long to stand in a call
    private static final String SEPARATION = """
            CREATE UNLOGGED TABLE separation AS
            SELECT p.site, p.id, u.id AS of, ST_Distance(p.geom, u.geom) - p.radius - u.radius AS metres
            FROM pipe p JOIN utility u ON ST_DWithin(p.geom, u.geom, %s + %s + %s)
            WHERE ST_Distance(p.geom, u.geom) - p.radius - u.radius <= %s;
            """;

    private final Path folder;
    private double widest;

    SpatialDatabase(Path folder) {
        this.folder = folder;
    }

    /** Writes the features as text that the database copies in, and gives the seconds that loading and indexing take. */
    double load(List<Site> sites) throws IOException, InterruptedException {
        Files.createDirectories(folder);
        StringBuilder sql = new StringBuilder("CREATE EXTENSION IF NOT EXISTS postgis;\n");
        for (Role role : ROLES) {
            String table = role.word();
            Path rows = folder.resolve(table + ".txt");
            write(role, sites, rows);
            sql.append("DROP TABLE IF EXISTS " + table + ";\nCREATE UNLOGGED TABLE " + table
                    + " (site int, id text, kind text, radius float8, geom geometry);\n\\copy " + table + " from '"
                    + rows
                    + "'\nCREATE INDEX ON " + table + " USING gist (geom);\nANALYZE " + table + ";\n");
        }
        run("CREATE EXTENSION IF NOT EXISTS postgis;");
        return run(sql.toString());
    }

    private void write(Role role, List<Site> sites, Path rows) throws IOException {
        WKBWriter binary = new WKBWriter();
        try (BufferedWriter out = Files.newBufferedWriter(rows)) {
            for (int number = 0; number < sites.size(); number++) {
                AffineTransformation away = AffineTransformation.translationInstance(number * APART, 0);
                for (Feature feature : sites.get(number).features(role)) {
                    Geometry there = away.transform(feature.geometry());
                    double radius = role == Role.PIPE || role == Role.UTILITY
                            ? OutsideDiameter.of(feature)
                                    .map(OutsideDiameter::radius)
                                    .orElse(0.0)
                            : 0;
                    widest = Math.max(widest, radius);
                    out.write(number + "\t" + feature.id() + "\t" + kind(feature) + "\t" + radius + "\t"
                            + WKBWriter.toHex(binary.write(there)) + "\n");
                }
            }
        }
    }

    private static String kind(Feature feature) {
        return switch (feature.role()) {
            case LOT -> feature.get(Attribute.OWN).orElse(false) ? "own" : "other";
            case WALK -> feature.get(Attribute.ACCESS).orElse("");
            default -> feature.get(Attribute.KIND).orElse("");
        };
    }

    double setback() throws IOException, InterruptedException {
        run("DROP TABLE IF EXISTS setback;");
        return run(SETBACK);
    }

    double separation(double within) throws IOException, InterruptedException {
        run("DROP TABLE IF EXISTS separation;");
        return run(String.format(Locale.ROOT, SEPARATION, within, widest, widest, within));
    }

    /** The answers of a table as lines of site, subject, other and metres. */
    List<String> answers(String table) throws IOException, InterruptedException {
        Path file = folder.resolve(table + ".csv");
        run("\\copy " + table + " to '" + file + "' csv\n");
        return Files.readAllLines(file);
    }

    /** Seconds by the clock, that of starting the client left out by asking nothing first. */
    private double run(String sql) throws IOException, InterruptedException {
        return seconds(sql) - seconds("SELECT 1;\n");
    }

    private double seconds(String sql) throws IOException, InterruptedException {
        Path script = folder.resolve("script.sql");
        Files.writeString(script, "SET client_min_messages = warning;\n" + sql);
        long start = System.nanoTime();
        Process psql = new ProcessBuilder(
                        "psql", "-q", "-X", "-v", "ON_ERROR_STOP=1", "-o", "/dev/null", "-f", script.toString())
                .inheritIO()
                .start();
        if (!psql.waitFor(1, TimeUnit.HOURS) || psql.exitValue() != 0) {
            throw new IOException("psql failed on " + sql);
        }
        return (System.nanoTime() - start) / 1e9;
    }
}
