@NullMarked
package org.fallrule.check.water;

import org.jspecify.annotations.NullMarked;
