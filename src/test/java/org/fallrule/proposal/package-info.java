@NullMarked
package org.fallrule.proposal;

import org.jspecify.annotations.NullMarked;
