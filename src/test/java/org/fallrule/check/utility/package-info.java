@NullMarked
package org.fallrule.check.utility;

import org.jspecify.annotations.NullMarked;
