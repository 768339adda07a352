@NullMarked
package org.fallrule.hydraulics.basin;

import org.jspecify.annotations.NullMarked;
