@NullMarked
package org.fallrule.hydraulics.table;

import org.jspecify.annotations.NullMarked;
