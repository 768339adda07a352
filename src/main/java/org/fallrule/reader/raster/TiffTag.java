package org.fallrule.reader.raster;

/**
 * Numbers of the tags that are read: TIFF Revision 6.0 (Adobe 1992), sections 8, 15 and 19; GeoTIFF (OGC 19-008r4, 2019,
 * section 7.1 and annex); the two of GDAL as its GeoTIFF driver page describes them.
 */
final class TiffTag {
    static final int IMAGE_WIDTH = 256;
    static final int IMAGE_LENGTH = 257;
    static final int BITS_PER_SAMPLE = 258;
    static final int STRIP_OFFSETS = 273;
    static final int SAMPLES_PER_PIXEL = 277;
    static final int ROWS_PER_STRIP = 278;
    static final int STRIP_BYTE_COUNTS = 279;
    static final int TILE_WIDTH = 322;
    static final int TILE_LENGTH = 323;
    static final int TILE_OFFSETS = 324;
    static final int TILE_BYTE_COUNTS = 325;
    static final int SAMPLE_FORMAT = 339;
    static final int MODEL_PIXEL_SCALE = 33550;
    static final int MODEL_TIEPOINT = 33922;
    static final int MODEL_TRANSFORMATION = 34264;
    static final int GEO_KEY_DIRECTORY = 34735;
    static final int GEO_ASCII_PARAMS = 34737;
    static final int GDAL_METADATA = 42112;
    static final int GDAL_NODATA = 42113;

    private TiffTag() {}
}
