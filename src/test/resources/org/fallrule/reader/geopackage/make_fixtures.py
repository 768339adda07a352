"""Writes the GeoPackages of this folder with GDAL, and beside each what GDAL reads back from it.

Run with a Python that has the osgeo package, in this folder. All data are invented; the places lie in open water.
"""
import glob
import os
import sqlite3

from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
gdal.SetConfigOption("OGR_CURRENT_DATE", "2024-01-01T00:00:00.000Z")
DRIVER = ogr.GetDriverByName("GPKG")

SHAPES = {
    "points": (ogr.wkbPoint, ["POINT (1000.5 2000.25)", "POINT (-7 1e6)", "POINT EMPTY", None]),
    "points_z": (ogr.wkbPoint25D, ["POINT Z (1 2 3.125)", "POINT Z (4 5 -6.0625)"]),
    "points_m": (ogr.wkbPointM, ["POINT M (1 2 30)"]),
    "points_zm": (ogr.wkbPointZM, ["POINT ZM (1 2 3 40)", "POINT ZM (5 6 7.7 0.1)"]),
    "multipoints": (ogr.wkbMultiPoint, ["MULTIPOINT (0 0, 1 0.1, 2 5)"]),
    "drains": (ogr.wkbLineString25D, [
        "LINESTRING Z (2700000.1 700000.2 100.1, 2700010 700000 99.9, 2700020 700005 99.5)",
        "LINESTRING Z (2700020 700005 99.5, 2700050 700005 98.75)"]),
    "multilines": (ogr.wkbMultiLineStringZM, ["MULTILINESTRING ZM ((0 0 1 5, 1 1 2 6), (5 5 3 7, 6 6 4 8))"]),
    "lots": (ogr.wkbPolygon, [
        "POLYGON ((0 0, 0 10, 10 10, 10 0, 0 0), (2 2, 4 2, 4 4, 2 4, 2 2), (6 6, 8 6, 7 8.5, 6 6))"]),
    "islands": (ogr.wkbMultiPolygon25D, [
        "MULTIPOLYGON Z (((0 0 1, 0 1 2, 1 1 3, 0 0 1)), ((5 5 4, 5 6 5, 6 6 6, 5 5 4)))"]),
    "anything": (ogr.wkbUnknown, [
        "GEOMETRYCOLLECTION (POINT (1 2), LINESTRING (0 0, 1 1))", "POINT (3 4)", "LINESTRING (0 0, 2 2, 3 1)"]),
    "Odd \"name\" of a layer": (ogr.wkbPoint, ["POINT (1 2)"]),
}
CURVES = {
    "arcs": (ogr.wkbCompoundCurve, [
        "COMPOUNDCURVE (CIRCULARSTRING (0 0, 1 1, 2 0), (2 0, 5 0))"]),
    "round_lots": (ogr.wkbCurvePolygon, ["CURVEPOLYGON (CIRCULARSTRING (0 0, 1 1, 2 0, 1 -1, 0 0))"]),
}


def system(text):
    srs = osr.SpatialReference()
    srs.SetFromUserInput(text)
    return srs


def fields(layer):
    for name, kind, subtype in [
        ("mark", ogr.OFTString, ogr.OFSTNone),
        ("depth", ogr.OFTReal, ogr.OFSTNone),
        ("slope", ogr.OFTReal, ogr.OFSTFloat32),
        ("pieces", ogr.OFTInteger, ogr.OFSTNone),
        ("small", ogr.OFTInteger, ogr.OFSTInt16),
        ("serial", ogr.OFTInteger64, ogr.OFSTNone),
        ("laid", ogr.OFTInteger, ogr.OFSTBoolean),
        ("surveyed", ogr.OFTDate, ogr.OFSTNone),
        ("changed", ogr.OFTDateTime, ogr.OFSTNone),
    ]:
        field = ogr.FieldDefn(name, kind)
        field.SetSubType(subtype)
        layer.CreateField(field)


def add(layer, wkt=None, fid=None, **values):
    feature = ogr.Feature(layer.GetLayerDefn())
    if fid is not None:
        feature.SetFID(fid)
    for key, value in values.items():
        feature.SetField(key, value)
    if wkt:
        feature.SetGeometry(ogr.CreateGeometryFromWkt(wkt))
    layer.CreateFeature(feature)


def write(name, tables, crs=None, values=True):
    source = DRIVER.CreateDataSource(name + ".gpkg")
    for table, (kind, shapes) in tables.items():
        layer = source.CreateLayer(table, crs and system(crs), kind, ["SPATIAL_INDEX=NO"])
        if values:
            fields(layer)
        for number, shape in enumerate(shapes):
            row = dict(
                mark=f"M-{number + 1} ä漢", depth=0.1 * number - 1, slope=0.25, pieces=number, small=-number,
                serial=9007199254740993 + number, laid=number % 2, surveyed="2024/02/29",
                changed="2024/02/29 12:30:15.5+00") if values and number < 2 else {}
            add(layer, shape, **row)
    source = None


def shrink(name):
    with sqlite3.connect(name + ".gpkg", isolation_level=None) as db:
        db.execute("PRAGMA page_size = 512")
        db.execute("VACUUM")


def parts(geometry, indent=""):
    name = ogr.GeometryTypeToName(ogr.GT_Flatten(geometry.GetGeometryType())).replace(" ", "")
    yield indent + name
    if geometry.GetGeometryCount():
        for index in range(geometry.GetGeometryCount()):
            yield from parts(geometry.GetGeometryRef(index), indent + "  ")
        return
    if geometry.IsEmpty():
        return
    for index in range(geometry.GetPointCount()):
        x, y, z, m = geometry.GetPointZM(index)
        vertex = f"{indent}  vertex x {x!r} y {y!r}"
        vertex += f" z {z!r}" if geometry.Is3D() else ""
        vertex += f" m {m!r}" if geometry.IsMeasured() else ""
        yield vertex


def value(feature, index):
    field = feature.GetFieldDefnRef(index)
    if field.GetSubType() == ogr.OFSTBoolean:
        return "flag " + ("true" if feature.GetField(index) else "false")
    if field.GetType() == ogr.OFTDateTime:
        year, month, day, hour, minute, second, _ = feature.GetFieldAsDateTime(index)
        return f"text {year}-{month:02}-{day:02}T{hour:02}:{minute:02}:{second:06.3f}Z"
    kind = {ogr.OFTString: "text", ogr.OFTReal: "number", ogr.OFTDate: "date"}
    return f"{kind.get(field.GetType(), 'whole')} {feature.GetField(index)}"


def listing(layer):
    yield f"table {layer.GetName()}"
    for feature in layer:
        yield f"feature {feature.GetFID()}"
        if layer.GetFIDColumn():
            yield f"column {layer.GetFIDColumn()} whole {feature.GetFID()}"
        for index in range(feature.GetFieldCount()):
            if feature.IsFieldSetAndNotNull(index):
                yield f"column {feature.GetFieldDefnRef(index).GetName()} {value(feature, index)}"
        geometry = feature.GetGeometryRef()
        yield from (["no shape"] if geometry is None else parts(geometry))


def keep_gdals_view(name):
    source = gdal.OpenEx(name + ".gpkg", gdal.OF_VECTOR)
    with open(name + ".txt", "w", encoding="utf-8") as out:
        out.write(f"# GDAL {gdal.__version__} reads {name}.gpkg so\n")
        for index in range(source.GetLayerCount()):
            out.writelines(line + "\n" for line in listing(source.GetLayer(index)))


for extension in ["gpkg", "gpkg-wal", "gpkg-shm", "txt"]:
    for old in glob.glob("*." + extension):
        os.remove(old)

write("kinds", SHAPES, "EPSG:2264")
shrink("kinds")
keep_gdals_view("kinds")
write("curves", CURVES, "EPSG:2264", values=False)
shrink("curves")

# ids with gaps, as after deletions, and a row that was deleted
source = DRIVER.CreateDataSource("gaps.gpkg")
layer = source.CreateLayer("drains", system("ESRI:102719"), ogr.wkbLineString, ["SPATIAL_INDEX=NO", "FID=key", "GEOMETRY_NAME=shape"])
fields(layer)
for fid in (7, 3, 12, 9):
    add(layer, f"LINESTRING ({fid} 0, 10 {fid})", fid=fid, mark=f"P-{fid}")
layer.DeleteFeature(12)
source = layer = None

# a view registered as a layer (OGC 12-128, clause 2.1.6)
with sqlite3.connect("gaps.gpkg") as db:
    db.execute("CREATE VIEW late AS SELECT key AS OGC_FID, shape, mark FROM drains WHERE key > 5")
    db.execute("INSERT INTO gpkg_contents (table_name, data_type, identifier, srs_id) SELECT 'late', 'features', 'late',"
               " srs_id FROM gpkg_geometry_columns")
    db.execute("INSERT INTO gpkg_geometry_columns SELECT 'late', 'shape', geometry_type_name, srs_id, z, m FROM"
               " gpkg_geometry_columns")
shrink("gaps")
keep_gdals_view("gaps")
