@NullMarked
package org.fallrule.hydraulics.pipe;

import org.jspecify.annotations.NullMarked;
