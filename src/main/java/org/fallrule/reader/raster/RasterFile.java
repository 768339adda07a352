package org.fallrule.reader.raster;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;

/** An elevation raster whose description has been read and whose heights have not. */
interface RasterFile {

    int columns();

    int rows();

    Placement placement();

    /** Its coordinate reference system as a code or well-known text, where the file says. */
    Optional<String> crs();

    /** The unit of its heights, where the file says. */
    Optional<Unit> heightUnit();

    /** The vertical datum of its heights, where the file says. */
    Optional<String> heightDatum();

    /** What is odd about its description without making it unusable. */
    List<Fault> notes();

    /**
     * Heights row by row in the file's unit; NaN where there is none.
     *
     * @throws UnusableInput when they cannot be read
     */
    double[] heights(CellWindow window);
}
