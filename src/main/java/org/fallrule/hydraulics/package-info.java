/** Water in pipes, through grates, out of outfalls and out of basins: the list of its methods. Pure functions, each with its published source as {@code METHOD}. */
@NullMarked
package org.fallrule.hydraulics;

import org.jspecify.annotations.NullMarked;
