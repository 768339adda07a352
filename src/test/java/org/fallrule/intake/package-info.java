@NullMarked
package org.fallrule.intake;

import org.jspecify.annotations.NullMarked;
