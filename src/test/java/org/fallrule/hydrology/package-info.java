@NullMarked
package org.fallrule.hydrology;

import org.jspecify.annotations.NullMarked;
