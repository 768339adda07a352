@NullMarked
package org.fallrule.reader.geopackage;

import org.jspecify.annotations.NullMarked;
