"""Writes what GDAL makes of the open data beside this file, as outside source for the tests.

Run with GDAL's Python bindings in this folder; the files in the repository were made with GDAL 3.6.2. README.md tells where
the data come from.
"""
import numpy
from osgeo import gdal, ogr

gdal.UseExceptions()


def written(name, head, rows):
    with open(name, "w") as out:
        out.write("# by GDAL %s: %s\n" % (gdal.__version__, head))
        out.writelines("\t".join(str(cell) for cell in row) + "\n" for row in rows)


def heights(data):
    """Bilinear: of a target cell of almost no size, in double precision."""
    gt = data.GetGeoTransform()
    rng = numpy.random.default_rng(3)
    for _ in range(60):
        x = gt[0] + rng.uniform(1, data.RasterXSize - 1) * gt[1]
        y = gt[3] + rng.uniform(1, data.RasterYSize - 1) * gt[5]
        half = 1e-6 * gt[1]
        cell = gdal.Warp("", data, format="MEM", outputBounds=[x - half, y - half, x + half, y + half], width=1, height=1,
                         resampleAlg="bilinear", outputType=gdal.GDT_Float64, errorThreshold=0)
        yield repr(x), repr(y), repr(float(cell.ReadAsArray()[0, 0]))


def grades(data):
    """At cell centres, by central differences (Zevenbergen and Thorne, 1987)."""
    gt = data.GetGeoTransform()
    slope = gdal.DEMProcessing("", data, "slope", format="MEM", alg="ZevenbergenThorne", slopeFormat="percent").ReadAsArray()
    aspect = gdal.DEMProcessing("", data, "aspect", format="MEM", alg="ZevenbergenThorne").ReadAsArray()
    for row in range(1, data.RasterYSize - 1, 3):
        for column in range(1, data.RasterXSize - 1, 3):
            bearing = aspect[row, column]
            yield (repr(gt[0] + (column + 0.5) * gt[1]), repr(gt[3] + (row + 0.5) * gt[5]), "%.6f" % slope[row, column],
                   "level" if bearing == -9999 else "%.4f" % bearing)


def linear():
    """Between spots: linear on the Delaunay triangles (gdal_grid, algorithm linear); none outside of them."""
    points = ogr.GetDriverByName("Memory").CreateDataSource("")
    layer = points.CreateLayer("spots", None, ogr.wkbPoint25D)
    for line in open("davis_1973.csv"):
        if line[0].isdigit():
            spot = ogr.Feature(layer.GetLayerDefn())
            spot.SetGeometry(ogr.CreateGeometryFromWkt("POINT Z (%s %s %s)" % tuple(line.strip().split(","))))
            layer.CreateFeature(spot)
    vector = gdal.GetDriverByName("Memory").Create("", 0, 0, 0)
    vector.CopyLayer(layer, "spots")
    step, count = 0.25, 24
    grid = gdal.Grid("", vector, format="MEM", outputType=gdal.GDT_Float64, width=count, height=count,
                     outputBounds=[0.21, 0.13, 0.21 + step * count, 0.13 + step * count],
                     algorithm="linear:radius=0:nodata=-9999")
    gt = grid.GetGeoTransform()
    for (row, column), z in numpy.ndenumerate(grid.ReadAsArray()):
        yield (repr(round(gt[0] + (column + 0.5) * gt[1], 9)), repr(round(gt[3] + (row + 0.5) * gt[5], 9)),
               "none" if z == -9999 else repr(float(z)))


olinda = gdal.Translate("", "olinda.asc", format="MEM", outputType=gdal.GDT_Float64)
written("olinda_heights.txt", "easting, northing, bilinear height in metres", heights(olinda))
written("olinda_grades.txt", "easting, northing of a cell's centre, slope in percent, bearing downhill", grades(olinda))
written("davis_1973_linear.txt", "x, y in units of 50 ft, height in feet", linear())
