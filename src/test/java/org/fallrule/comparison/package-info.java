@NullMarked
package org.fallrule.comparison;

import org.jspecify.annotations.NullMarked;
