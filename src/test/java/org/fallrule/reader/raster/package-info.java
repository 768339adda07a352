@org.jspecify.annotations.NullMarked
package org.fallrule.reader.raster;
