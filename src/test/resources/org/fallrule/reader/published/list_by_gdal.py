"""Writes beside each file of this folder what GDAL reads in it: a .txt, or a .txt.gz where it is long.

Run with a Python that has the osgeo package, in this folder.
"""
import glob
import gzip

from osgeo import gdal, ogr

gdal.UseExceptions()
ogr.UseExceptions()
LONG = 50_000


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
    layer = (source := gdal.OpenEx(name, gdal.OF_VECTOR)).GetLayer(0)
    kinds = {ogr.OFTString: "text", ogr.OFTReal: "number", ogr.OFTDate: "date"}
    for number, feature in enumerate(layer):
        key = layer.GetFIDColumn()
        yield f"feature {feature.GetFID() if key else number + 1}"
        if key:
            yield f"column {key} whole {feature.GetFID()}"
        for index in range(feature.GetFieldCount()):
            if feature.IsFieldSetAndNotNull(index):
                field = feature.GetFieldDefnRef(index)
                yield f"column {field.GetName()} {kinds.get(field.GetType(), 'whole')} {feature.GetField(index)!s}"
        geometry = feature.GetGeometryRef()
        yield from (["no shape"] if geometry is None else parts(geometry))


for name in sorted([name for name in glob.glob("*.shp") if name != "multipatch.shp"] + glob.glob("*.gpkg") + glob.glob("*.geojson")):
    text = f"# GDAL {gdal.__version__} reads {name} so\n" + "".join(line + "\n" for line in listing(name))
    if len(text) > LONG:
        with open(name + ".txt.gz", "wb") as out, gzip.GzipFile("", "wb", mtime=0, fileobj=out) as packed:
            packed.write(text.encode())
    else:
        with open(name + ".txt", "w", encoding="utf-8") as out:
            out.write(text)
