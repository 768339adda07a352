/** Tables printed in codes and manuals, kept as data with their sources, and what they say. */
@NullMarked
package org.fallrule.hydraulics.table;

import org.jspecify.annotations.NullMarked;
