@NullMarked
package org.fallrule.check.ground;

import org.jspecify.annotations.NullMarked;
