@NullMarked
package org.fallrule.reader.shapefile;

import org.jspecify.annotations.NullMarked;
