"""Writes the shapefiles of this folder with GDAL, and beside each what GDAL reads back from it.

Run with a Python that has the osgeo package, in this folder. All data are invented.
"""
import glob
import os

from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
DRIVER = ogr.GetDriverByName("ESRI Shapefile")

TYPES = {
    "point": (ogr.wkbPoint, ["POINT (1000.5 2000.25)", "POINT (-7 1e6)"]),
    "point_z": (ogr.wkbPoint25D, ["POINT Z (1 2 3.125)", "POINT Z (4 5 -6.0625)"]),
    "point_m": (ogr.wkbPointM, ["POINT M (1 2 30)", "POINT M (4 5 0.1)"]),
    "point_zm": (ogr.wkbPointZM, ["POINT ZM (1 2 3 40)", "POINT ZM (5 6 7.7 0.1)"]),
    "multipoint": (ogr.wkbMultiPoint, ["MULTIPOINT (0 0, 1 0.1, 2 5)", "MULTIPOINT (9 9)"]),
    "multipoint_z": (ogr.wkbMultiPoint25D, ["MULTIPOINT Z (0 0 1, 1 0.1 2.5)"]),
    "multipoint_m": (ogr.wkbMultiPointM, ["MULTIPOINT M (0 0 1, 1 0.1 2.5)"]),
    "multipoint_zm": (ogr.wkbMultiPointZM, ["MULTIPOINT ZM (0 0 1 10, 1 0.1 2.5 20)"]),
    "line": (ogr.wkbLineString, [
        "LINESTRING (0 0, 10 0.1, 20 5)",
        "MULTILINESTRING ((0 0, 1 1), (5 5, 6 6, 7 5.3))"]),
    "line_z": (ogr.wkbLineString25D, [
        "LINESTRING Z (0 0 100.1, 10 0 99.9, 20 5 99.5)",
        "MULTILINESTRING Z ((0 0 1, 1 1 2), (5 5 3, 6 6 4))"]),
    "line_m": (ogr.wkbLineStringM, [
        "LINESTRING M (0 0 0, 10 0 10, 20 5 21.18)",
        "MULTILINESTRING M ((0 0 1, 1 1 2), (5 5 3, 6 6 4))"]),
    "line_zm": (ogr.wkbLineStringZM, [
        "LINESTRING ZM (0 0 100 0, 10 0 99.9 10, 20 5 99.5 21.18)"]),
    "polygon": (ogr.wkbPolygon, [
        "POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0))",
        "POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 4 2, 4 4, 2 4, 2 2), (6 6, 8 6, 7 8.5, 6 6))",
        "MULTIPOLYGON (((0 0, 0 20, 20 20, 20 0, 0 0), (5 5, 15 5, 15 15, 5 15, 5 5)),"
        " ((8 8, 8 12, 12 12, 12 8, 8 8)), ((30 0, 30 1, 31 1, 30 0)))"]),
    "polygon_z": (ogr.wkbPolygon25D, [
        "POLYGON Z ((0 0 7.5, 0 10 7.5, 10 10 7.5, 10 0 7.5, 0 0 7.5), (2 2 7.5, 4 2 7.5, 4 4 7.5, 2 4 7.5, 2 2 7.5))",
        "MULTIPOLYGON Z (((0 0 1, 0 1 2, 1 1 3, 0 0 1)), ((5 5 4, 5 6 5, 6 6 6, 5 5 4)))"]),
    # GDAL takes a ring of another height for a shell and winds it so
    "hole_at_other_height": (ogr.wkbPolygon25D, [
        "POLYGON Z ((0 0 1, 0 10 2, 10 10 3, 10 0 4, 0 0 1), (2 2 5, 4 2 6, 4 4 7, 2 4 8, 2 2 5))"]),
    "polygon_m": (ogr.wkbPolygonM, [
        "POLYGON M ((0 0 1, 0 10 2, 10 10 3, 10 0 4, 0 0 1))"]),
    "polygon_zm": (ogr.wkbPolygonZM, [
        "POLYGON ZM ((0 0 1 9, 0 10 2 8, 10 10 3 7, 10 0 4 6, 0 0 1 9))"]),
}


def fields(layer):
    for name, kind, width, precision in [
        ("mark", ogr.OFTString, 20, 0),
        ("depth", ogr.OFTReal, 12, 4),
        ("count", ogr.OFTInteger, 6, 0),
        ("serial", ogr.OFTInteger64, 18, 0),
        ("surveyed", ogr.OFTDate, 0, 0),
        ("wide", ogr.OFTReal, 0, 0),
    ]:
        field = ogr.FieldDefn(name, kind)
        field.SetWidth(width)
        field.SetPrecision(precision)
        layer.CreateField(field)


def create(name, kind, encoding="UTF-8", epsg=None):
    srs = None
    if epsg:
        srs = osr.SpatialReference()
        srs.ImportFromEPSG(epsg)
    source = DRIVER.CreateDataSource(name + ".shp")
    layer = source.CreateLayer(name, srs, kind, [f"ENCODING={encoding}"])
    fields(layer)
    return source, layer


def add(layer, wkt=None, **values):
    feature = ogr.Feature(layer.GetLayerDefn())
    for key, value in values.items():
        feature.SetField(key, value)
    if wkt:
        feature.SetGeometry(ogr.CreateGeometryFromWkt(wkt))
    layer.CreateFeature(feature)


def parts(geometry, indent=""):
    name = ogr.GeometryTypeToName(ogr.GT_Flatten(geometry.GetGeometryType())).replace(" ", "")
    yield indent + name
    if geometry.GetGeometryCount():
        for index in range(geometry.GetGeometryCount()):
            yield from parts(geometry.GetGeometryRef(index), indent + "  ")
        return
    for index in range(geometry.GetPointCount()):
        x, y, z, m = geometry.GetPointZM(index)
        vertex = f"{indent}  vertex x {x!r} y {y!r}"
        vertex += f" z {z!r}" if geometry.Is3D() else ""
        vertex += f" m {m!r}" if geometry.IsMeasured() else ""
        yield vertex


def listing(name):
    gdal.SetConfigOption("SHAPE_ENCODING", None)
    source = gdal.OpenEx(name + ".shp", gdal.OF_VECTOR, open_options=["AUTO_REPACK=NO"])
    layer = source.GetLayer(0)
    for feature in layer:
        yield f"feature {feature.GetFID() + 1}"
        for index in range(feature.GetFieldCount()):
            if feature.IsFieldSetAndNotNull(index):
                field = feature.GetFieldDefnRef(index)
                value = feature.GetField(index)
                kind = {ogr.OFTString: "text", ogr.OFTReal: "number", ogr.OFTDate: "date"}
                yield f"column {field.GetName()} {kind.get(field.GetType(), 'whole')} {value}"
        geometry = feature.GetGeometryRef()
        yield from (["no shape"] if geometry is None else parts(geometry))


def keep_gdals_view(name):
    with open(name + ".txt", "w", encoding="utf-8") as out:
        out.write(f"# GDAL {gdal.__version__} reads {name}.shp so\n")
        out.writelines(line + "\n" for line in listing(name))


for extension in ["shp", "shx", "dbf", "cpg", "prj", "txt"]:
    for old in glob.glob("*." + extension):
        os.remove(old)

for name, (kind, shapes) in TYPES.items():
    source, layer = create(name, kind)
    for number, shape in enumerate(shapes):
        add(layer, shape, mark=f"M-{number + 1}", depth=0.1 * number - 1, count=number)
    source = layer = None

source, layer = create("lots", ogr.wkbPolygon, epsg=32617)
add(layer, "POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0))", mark="Größe ≤ ½", depth=12.5, count=-7, serial=123456789012345678,
    surveyed="2026/02/28", wide=1e-7)
add(layer, None, mark="no shape")
add(layer, "POLYGON ((0 0, 0 1, 1 1, 1 0, 0 0))")
add(layer, "POLYGON ((5 5, 5 6, 6 6, 6 5, 5 5))", mark="later", surveyed="1999/12/31", wide=-123456.789)
source = layer = None

source, layer = create("western", ogr.wkbPoint, encoding="CP1252")
add(layer, "POINT (1 2)", mark="Übergang €", depth=1)
add(layer, "POINT (3 4)", mark="déjà", depth=2)
source = layer = None

source, layer = create("marked", ogr.wkbPoint, encoding="LDID/3")
add(layer, "POINT (1 2)", mark="Übergang €", depth=1)
source = layer = None

source, layer = create("deleted", ogr.wkbPointZM)
for number in range(5):
    add(layer, f"POINT ZM ({number} {number * 2} {number * 3} {number * 4})", mark=f"row {number + 1}", count=number)
source = layer = None
source = gdal.OpenEx("deleted.shp", gdal.OF_VECTOR | gdal.OF_UPDATE, open_options=["AUTO_REPACK=NO"])
source.GetLayer(0).DeleteFeature(1)
source.GetLayer(0).DeleteFeature(4)
source = None

for shape in glob.glob("*.shp"):
    keep_gdals_view(shape[:-4])
