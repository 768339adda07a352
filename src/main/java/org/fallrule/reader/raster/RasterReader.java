package org.fallrule.reader.raster;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.HeightField;
import org.locationtech.jts.geom.Envelope;

/** Reads the part of an elevation raster that lies around a plan: GeoTIFF, or ESRI ASCII grid. */
public final class RasterReader {
    private static final long MOST_PRJ_BYTES = 100_000;

    private final Path file;
    private final Place where;

    private RasterReader(Path file, String shownAs) {
        this.file = file;
        this.where = Place.of(shownAs);
    }

    /**
     * What was read.
     *
     * @param heights the ground
     * @param crs the name of the raster's coordinate reference system
     * @param datum the vertical datum that it names, if it does
     * @param notes what was odd without making the raster unusable
     */
    public record Reading(HeightField heights, String crs, Optional<String> datum, List<Fault> notes) {}

    /**
     * Reads a raster around a plan. Its coordinate reference system is the one that the file names, else that of the {@code
     * .prj} file beside it, else the site's; its unit of height the one that the file names, else the given one.
     *
     * @param shownAs the file's name as the user knows it
     * @param siteCrs the plan's coordinate reference system, a code or well-known text
     * @param verticalUnit the unit of the heights, of length or of elevation
     * @param frame the plan's frame
     * @param around the box, in the frame, that heights are wanted for
     * @throws UnusableInput when the raster cannot be read, placed or measured, or does not reach into the box
     */
    public static Reading read(
            Path file,
            String shownAs,
            Optional<String> siteCrs,
            Optional<Unit> verticalUnit,
            LocalFrame frame,
            Envelope around) {
        return new RasterReader(file, shownAs).reading(siteCrs, verticalUnit, frame, around);
    }

    /**
     * What a raster says of itself.
     *
     * @param hasSystem whether it, or the {@code .prj} beside it, names a coordinate reference system
     * @param heightUnit the unit of its heights
     */
    public record Description(boolean hasSystem, Optional<Unit> heightUnit) {}

    /**
     * Reads what a raster says of itself, without its heights.
     *
     * @throws UnusableInput when it cannot be read
     */
    public static Description describe(Path file, String shownAs) {
        RasterReader reader = new RasterReader(file, shownAs);
        RasterFile raster = reader.open();
        boolean says = raster.crs().isPresent() || reader.projectionFile().isPresent();
        Optional<Unit> unit = says
                ? raster.heightUnit().or(() -> bySystem(reader.system(raster, Optional.empty(), new ArrayList<>())))
                : raster.heightUnit();
        return new Description(says, unit);
    }

    private Reading reading(Optional<String> siteCrs, Optional<Unit> verticalUnit, LocalFrame frame, Envelope around) {
        RasterFile raster = open();
        List<Fault> notes = new ArrayList<>(raster.notes());
        CoordinateSystem system = system(raster, siteCrs, notes);
        Unit unit = unit(raster, system, verticalUnit, notes);
        RasterAround part = new RasterAround(raster, system, frame, around, where);
        RasterHeights heights = part.heights(unit.toSi());
        part.note().ifPresent(notes::add);
        return new Reading(heights, system.name(), raster.heightDatum().or(system::heightDatum), List.copyOf(notes));
    }

    private RasterFile open() {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (!Files.isRegularFile(file)) {
            throw new UnusableInput(where, "there is no such file; name a GeoTIFF (.tif) or an ESRI ASCII grid (.asc)");
        }
        if (name.endsWith(".tif") || name.endsWith(".tiff")) {
            return TiffFile.open(file, where);
        }
        if (name.endsWith(".asc")) {
            return AsciiGridFile.open(file, where);
        }
        throw new UnusableInput(
                where, "is of no kind of raster that is read; wanted a GeoTIFF (.tif) or an ESRI ASCII grid (.asc)");
    }

    private CoordinateSystem system(RasterFile raster, Optional<String> siteCrs, List<Fault> notes) {
        if (raster.crs().isPresent()) {
            return CoordinateSystem.of(raster.crs().get(), where);
        }
        Optional<Path> beside = projectionFile();
        if (beside.isPresent()) {
            return CoordinateSystem.of(
                    text(beside.get()), Place.of(beside.get().getFileName().toString()));
        }
        String crs = siteCrs.orElseThrow(() -> new UnusableInput(
                where,
                "says nothing of its coordinate reference system (no .prj beside it); supply the .prj, or name it in"
                        + " site.yaml, such as crs: EPSG:2264"));
        notes.add(new Fault(
                where,
                "says nothing of its coordinate reference system; the plan's was taken (" + crs.strip()
                        + "); supply its .prj if it is another"));
        return CoordinateSystem.of(crs, Place.of("site.yaml").field("crs"));
    }

    private Optional<Path> projectionFile() {
        String name = file.getFileName().toString();
        String stem = name.substring(0, name.lastIndexOf('.'));
        return Stream.of(".prj", ".PRJ")
                .map(ending -> file.resolveSibling(stem + ending))
                .filter(Files::isRegularFile)
                .findFirst();
    }

    private String text(Path prj) {
        try {
            if (Files.size(prj) > MOST_PRJ_BYTES) {
                throw new UnusableInput(
                        Place.of(prj.getFileName().toString()), "is far too long for a .prj file; wanted WKT1");
            }
            return new String(Files.readAllBytes(prj), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UnusableInput(Place.of(prj.getFileName().toString()), "cannot be read: " + e.getMessage());
        }
    }

    private Unit unit(RasterFile raster, CoordinateSystem system, Optional<Unit> given, List<Fault> notes) {
        Optional<Unit> said = raster.heightUnit().or(() -> bySystem(system));
        if (said.isPresent()
                && given.isPresent()
                && said.get().toSi() != given.get().toSi()) {
            notes.add(new Fault(
                    where,
                    "its heights are in " + said.get().symbol() + " by its own words; "
                            + given.get().symbol() + " in site.yaml was not used; mend the one that is wrong"));
        }
        return said.or(() -> given)
                .orElseThrow(() -> new UnusableInput(
                        where,
                        "says nothing of the unit of its heights; say unit: ft, ft_us or m for it in site.yaml, as in layers:"
                                + " {ground: {file: " + where.file() + ", unit: ft}}"));
    }

    private static Optional<Unit> bySystem(CoordinateSystem system) {
        return system.heightUnitToMetre().stream()
                .boxed()
                .flatMap(metres -> HeightUnits.of(metres).stream())
                .findFirst();
    }
}
