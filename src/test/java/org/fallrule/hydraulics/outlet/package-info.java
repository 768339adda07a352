@NullMarked
package org.fallrule.hydraulics.outlet;

import org.jspecify.annotations.NullMarked;
