@NullMarked
package org.fallrule.hydraulics;

import org.jspecify.annotations.NullMarked;
