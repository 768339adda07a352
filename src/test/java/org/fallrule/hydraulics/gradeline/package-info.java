@NullMarked
package org.fallrule.hydraulics.gradeline;

import org.jspecify.annotations.NullMarked;
