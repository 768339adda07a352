"""Writes the small rasters beside this file, and what GDAL itself reads from them, as outside source for the tests.

Run with GDAL's Python bindings; the files in the repository were made with GDAL 3.6.2. The ground is invented. Each reading is
a position in the raster's coordinate reference system and the height that gdalwarp finds there by bilinear interpolation;
"none" where the nearest cell has no data.
"""
import math
import os

import numpy
from osgeo import gdal, osr

gdal.UseExceptions()
HERE = os.path.dirname(os.path.abspath(__file__))
COLUMNS, ROWS = 48, 36


def ground():
    y, x = numpy.mgrid[0:ROWS, 0:COLUMNS]
    noise = numpy.random.default_rng(7).normal(0, 0.2, (ROWS, COLUMNS))
    return 640 + 0.15 * x - 0.09 * y + 3 * numpy.sin(x / 7) * numpy.cos(y / 9) + noise


def wkt(srs):
    system = osr.SpatialReference()
    system.SetFromUserInput(srs)
    return system.ExportToWkt()


def make(name, kind, srs, transform, options=(), none=-9999.0, scale=None, point=False, driver="GTiff"):
    heights = ground()
    if scale:
        heights = (heights - scale[1]) / scale[0]
    heights[5:9, 20:25] = none if none is not None else heights[5:9, 20:25]
    memory = gdal.GetDriverByName("MEM").Create("", COLUMNS, ROWS, 1, kind)
    memory.SetGeoTransform(transform)
    if srs:
        memory.SetProjection(wkt(srs))
    band = memory.GetRasterBand(1)
    band.WriteArray(heights)
    if none is not None:
        band.SetNoDataValue(none)
    if scale:
        band.SetScale(scale[0])
        band.SetOffset(scale[1])
    if point:
        memory.SetMetadataItem("AREA_OR_POINT", "Point")
    path = os.path.join(HERE, name)
    gdal.GetDriverByName(driver).CreateCopy(path, memory, options=list(options))
    for spare in (path + ".aux.xml",):
        if os.path.exists(spare):
            os.remove(spare)
    readings(name)


def reading(data, x, y, column, row):
    band = data.GetRasterBand(1)
    none = band.GetNoDataValue()
    cell = band.ReadAsArray(int(column), int(row), 1, 1)[0, 0]
    if cell != cell or (none is not None and cell == none):
        return "none"
    half = 1e-4 * abs(data.GetGeoTransform()[1])
    out = gdal.Warp("", data, format="MEM", outputBounds=[x - half, y - half, x + half, y + half], width=1, height=1,
                    resampleAlg="bilinear", outputType=gdal.GDT_Float64, errorThreshold=0)
    value = out.GetRasterBand(1).ReadAsArray()[0, 0]
    return repr(float(value * (band.GetScale() or 1) + (band.GetOffset() or 0)))


def readings(name):
    data = gdal.Open(os.path.join(HERE, name))
    gt = data.GetGeoTransform()
    rng = numpy.random.default_rng(11)
    lines = ["# %s as read by GDAL %s: x, y, height" % (name, gdal.__version__)]
    cells = [(rng.uniform(1, COLUMNS - 1), rng.uniform(1, ROWS - 1)) for _ in range(40)] + [(22.5, 7.5), (21.7, 6.2)]
    for column, row in cells:
        near_none = 18 < column < 27 and 3 < row < 11 and not (21 < column < 24 and 6 < row < 8)
        if near_none:
            continue
        x = gt[0] + column * gt[1] + row * gt[2]
        y = gt[3] + column * gt[4] + row * gt[5]
        lines.append("%r\t%r\t%s" % (x, y, reading(data, x, y, column, row)))
    with open(os.path.join(HERE, name + ".txt"), "w") as out:
        out.write("\n".join(lines) + "\n")


FEET = (1450000.0, 10.0, 0.0, 550000.0, 0.0, -10.0)
F32, F64, I16, U16, I32 = gdal.GDT_Float32, gdal.GDT_Float64, gdal.GDT_Int16, gdal.GDT_UInt16, gdal.GDT_Int32
BLOCKS = ["TILED=YES", "BLOCKXSIZE=16", "BLOCKYSIZE=16"]

make("plain.tif", F32, "EPSG:2264", FEET)
make("deflate_float_tiled.tif", F32, "EPSG:2264", FEET, ["COMPRESS=DEFLATE", "PREDICTOR=3"] + BLOCKS)
make("deflate_double.tif", F64, "EPSG:2264", FEET, ["COMPRESS=DEFLATE", "PREDICTOR=3"])
make("lzw_int16.tif", I16, "EPSG:2264", FEET, ["COMPRESS=LZW", "PREDICTOR=2"], none=-32768, scale=(0.01, 600.0))
make("lzw_float_tiled.tif", F32, "EPSG:2264", FEET, ["COMPRESS=LZW"] + BLOCKS)
make("zstd_float.tif", F32, "EPSG:2264", FEET, ["COMPRESS=ZSTD", "PREDICTOR=3"])
make("zstd_int32_tiled.tif", I32, "EPSG:2264", FEET, ["COMPRESS=ZSTD", "PREDICTOR=2"] + BLOCKS, none=-99999,
     scale=(0.001, 0.0))
make("uint16.tif", U16, "EPSG:2264", FEET, ["COMPRESS=DEFLATE", "PREDICTOR=2"], none=65535, scale=(0.02, 500.0))
make("point.tif", F32, "EPSG:2264", FEET, ["COMPRESS=DEFLATE"], point=True)
make("bigtiff.tif", F32, "EPSG:2264", FEET, ["BIGTIFF=YES", "COMPRESS=DEFLATE"])
make("bigendian.tif", F32, "EPSG:2264", FEET, ["ENDIANNESS=BIG", "COMPRESS=LZW", "PREDICTOR=2"])
make("nan_nodata.tif", F32, "EPSG:2264", FEET, ["COMPRESS=DEFLATE"], none=float("nan"))
make("vertical_feet.tif", F32, "EPSG:2264+6360", FEET, ["COMPRESS=DEFLATE"])
make("degrees.tif", F32, "EPSG:4269", (-80.9, 1 / 10800, 0.0, 35.3, 0.0, -1 / 10800), ["COMPRESS=DEFLATE"])
turn = math.radians(25)
make("turned.tif", F32, "EPSG:26917", (510000.0, 2 * math.cos(turn), 2 * math.sin(turn), 3905000.0, 2 * math.sin(turn),
                                       -2 * math.cos(turn)), ["COMPRESS=DEFLATE"])
make("own_projection.tif", F32, "+proj=lcc +lat_0=34 +lon_0=-80 +lat_1=34.5 +lat_2=36 +x_0=600000 +y_0=0 +datum=NAD83",
     (550000.0, 3.0, 0.0, 150000.0, 0.0, -3.0), ["COMPRESS=DEFLATE"])
make("no_crs.tif", F32, None, FEET, ["COMPRESS=DEFLATE"])
make("corner.asc", F32, "EPSG:2264", FEET, ["DECIMAL_PRECISION=3"], driver="AAIGrid")

with open(os.path.join(HERE, "corner.asc")) as corner:
    lines = corner.read().replace("xllcorner    ", "xllcenter    ").replace("yllcorner    ", "yllcenter    ")
with open(os.path.join(HERE, "centre.asc"), "w") as centre:
    centre.write(lines)
readings("centre.asc")
