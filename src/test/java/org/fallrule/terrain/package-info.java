@NullMarked
package org.fallrule.terrain;

import org.jspecify.annotations.NullMarked;
