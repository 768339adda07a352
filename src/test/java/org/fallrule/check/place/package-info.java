@NullMarked
package org.fallrule.check.place;

import org.jspecify.annotations.NullMarked;
