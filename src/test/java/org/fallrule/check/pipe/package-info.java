@NullMarked
package org.fallrule.check.pipe;

import org.jspecify.annotations.NullMarked;
